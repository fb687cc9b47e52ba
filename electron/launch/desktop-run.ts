import { spawn, type ChildProcess } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Phrase, Problem } from '../../core/problem/index.ts'
import { askToQuit, endTree, ownGroup } from './process-tree.ts'

/** How the run of the desktop host went. After a signal nothing else is started: the person wanted it to end. */
export type DesktopRun =
  | { readonly kind: 'ended'; readonly code: number }
  | { readonly kind: 'interrupted'; readonly code: number }
  /** No window was seen. The other host is still to be had. */
  | { readonly kind: 'no-window'; readonly why: Phrase }

export type DesktopCommand = {
  readonly binary: string
  readonly words: readonly string[]
  readonly env: Readonly<Record<string, string | undefined>>
}

export type Patience = {
  /** Longest wait for the window, in milliseconds. A first start has taken 6 s under load. */
  readonly windowMs: number
  /** One Ctrl+C comes in more than once, from the terminal and from a launcher before this one: within this, in milliseconds. */
  readonly sameSignalMs: number
}

const usualPatience: Patience = { windowMs: 30_000, sameSignalMs: 2_000 }
const lookingMs = 100
const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const

/**
 * Runs the desktop host to its end. That its window came up cannot be known by a clock, so it leaves a sign in the file that
 * `BEDPLATE_SIGN` names: `shown`, or `refused: ` and a problem. Until then a long limit is kept, after which it is ended
 * with all that it started.
 */
export async function runDesktop(
  { binary, words, env }: DesktopCommand,
  patience: Patience = usualPatience,
): Promise<DesktopRun> {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-sign-'))
  const sign = join(folder, 'sign')
  const { ELECTRON_RUN_AS_NODE: _, ...surroundings } = env
  const desktop = spawn(binary, words, {
    ...ownGroup,
    env: { ...surroundings, BEDPLATE_SIGN: sign },
    stdio: ['ignore', 'inherit', 'inherit'],
  })
  const signalled = passSignalsOn(desktop, patience.sameSignalMs)
  try {
    return await outcomeOf(desktop, sign, patience.windowMs, signalled.was)
  } finally {
    signalled.stop()
    rmSync(folder, { recursive: true, force: true })
  }
}

async function outcomeOf(
  desktop: ChildProcess,
  sign: string,
  windowMs: number,
  wasSignalled: () => boolean,
): Promise<DesktopRun> {
  const end = new Promise<number | Error | null>((resolve) => {
    desktop.once('error', resolve)
    desktop.once('exit', resolve)
  })
  const seen = await Promise.race([signOf(sign, windowMs), end.then(() => 'ended' as const)])
  if (seen === 'late' && !wasSignalled()) {
    await endTree(desktop)
    return { kind: 'no-window', why: { code: 'noWindowInTime', facts: { seconds: windowMs / 1000 } } }
  }
  const code = await end
  if (wasSignalled()) return { kind: 'interrupted', code: typeof code === 'number' ? code : 1 }
  if (code instanceof Error)
    return { kind: 'no-window', why: { code: 'electronNotStarted', facts: { message: code.message } } }
  const left = readSign(sign)
  if (left === 'shown') return { kind: 'ended', code: code ?? 1 }
  return { kind: 'no-window', why: refusalIn(left) ?? { code: 'electronEnded', facts: { code } } }
}

/** The sign's problem; `undefined` where there is no sign, or none that the desktop host of these sources leaves. */
function refusalIn(sign: string | undefined): Phrase | undefined {
  const [, json] = /^refused: (.*)$/s.exec(sign ?? '') ?? []
  return json === undefined
    ? undefined
    : { code: 'desktopGaveUp', facts: { why: JSON.parse(json) as Problem } }
}

/** The first of signals is passed on, once; another one that is not the same again ends all. */
function passSignalsOn(
  desktop: ChildProcess,
  sameMs: number,
): { readonly was: () => boolean; readonly stop: () => void } {
  let first: number | undefined
  const passOn = (signal: NodeJS.Signals): void => {
    if (first === undefined) {
      first = performance.now()
      askToQuit(desktop, signal)
    } else if (performance.now() - first >= sameMs) {
      void endTree(desktop)
    }
  }
  for (const signal of signals) process.on(signal, passOn)
  return {
    was: () => first !== undefined,
    stop: () => {
      for (const signal of signals) process.off(signal, passOn)
    },
  }
}

/** Looks for the sign until it is there or the limit is over. */
async function signOf(file: string, limitMs: number): Promise<string> {
  const until = performance.now() + limitMs
  for (;;) {
    const sign = readSign(file)
    if (sign !== undefined) return sign
    if (performance.now() >= until) return 'late'
    await new Promise((resolve) => setTimeout(resolve, lookingMs).unref())
  }
}

function readSign(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8') || undefined
  } catch {
    return undefined
  }
}
