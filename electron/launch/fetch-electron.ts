import { spawn } from 'node:child_process'
import { mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Phrase } from '../../core/problem/index.ts'
import { findElectron, wantedVersion } from './electron-binary.ts'
import { asPhrase } from './fetch-reason.ts'
import { networkOf } from './network.ts'
import { words } from './spoken.ts'

type Env = Readonly<Record<string, string | undefined>>

const { fetching } = words.launch

/** Longest time without a byte before a download counts as failed, in seconds. */
const patienceS = 20

/** A line about how far it is, each so many seconds. */
const reportEveryS = 5

/** What the preload in fetch-notes.mjs sends. */
export type FetchNote =
  | { readonly total: number }
  | { readonly host: string; readonly status: number }
  | { readonly host: string; readonly cause: string }

/** Why the wanted version of Electron could not be fetched the last time; `undefined` when it was never tried. */
export function lastFailure(root: string): Phrase | undefined {
  try {
    const note = JSON.parse(readFileSync(noteFile(root), 'utf8')) as { version: unknown; why: unknown }
    return note.version === wantedVersion(root) ? asPhrase(note.why) : undefined
  } catch {
    return undefined
  }
}

/**
 * Downloads Electron, and answers why it is not there afterwards, or with `undefined` when it is. A failure is kept with
 * its reason, so that the next start does not wait for the same one. It is given up when nothing arrives for a while; how
 * long it takes in all depends on the line, so that is not limited.
 */
export async function fetchElectron(root: string, env: Env): Promise<Phrase | undefined> {
  console.error(fetching.begins)
  const why = await download(root, env)
  if (why === undefined) rmSync(noteFile(root), { force: true })
  else {
    mkdirSync(join(root, 'dist'), { recursive: true })
    writeFileSync(noteFile(root), JSON.stringify({ version: wantedVersion(root), why }))
  }
  return why
}

async function download(root: string, env: Env): Promise<Phrase | undefined> {
  const arriving = join(root, 'dist/electron-download')
  rmSync(arriving, { recursive: true, force: true })
  mkdirSync(arriving, { recursive: true })
  const notes = join(import.meta.dirname, 'fetch-notes.mjs')
  const installer = spawn(
    process.execPath,
    ['--import', notes, join(root, 'node_modules/electron/install.js')],
    {
      env: { ...env, ...networkOf(env), TMPDIR: arriving, TEMP: arriving, TMP: arriving },
      stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
    },
  )
  let reason: Phrase | undefined
  let total: number | undefined
  let errors = ''
  installer.on('message', (note: FetchNote) => {
    if ('total' in note) total = note.total
    else
      reason =
        'status' in note ? { code: 'serverAnswered', facts: note } : { code: 'serverNotReached', facts: note }
  })
  installer.stderr?.on('data', (text) => (errors += String(text)))
  const unpacking = join(root, 'node_modules/electron')
  const watching = watch({
    arrived: () => sizeBelow(arriving),
    alive: () => sizeBelow(arriving) + sizeBelow(unpacking),
    report: (bytes) =>
      console.error(
        fetching.arrived({ megabytes: megabytes(bytes), of: total === undefined ? null : megabytes(total) }),
      ),
    stop: () => {
      reason = { code: 'nothingArrived', facts: { seconds: patienceS } }
      installer.kill()
    },
  })
  const code = await new Promise<number | null>((resolve) => {
    installer.on('error', () => resolve(null))
    installer.on('close', resolve)
  })
  clearInterval(watching)
  rmSync(arriving, { recursive: true, force: true })
  if (code === 0 && findElectron(root, undefined).kind === 'there') return undefined
  if (reason !== undefined) return reason
  const line = firstLineOf(errors)
  return line === undefined
    ? { code: 'installerLeftNothing', facts: { code } }
    : { code: 'installerPrinted', facts: { line } }
}

interface WatchedFetch {
  readonly arrived: () => number
  /** Grows while there is something to wait for, in the unpacking too. */
  readonly alive: () => number
  readonly report: (bytes: number) => void
  readonly stop: () => void
}

function watch({ arrived, alive, report, stop }: WatchedFetch): NodeJS.Timeout {
  let seconds = 0
  let last = 0
  let idle = 0
  return setInterval(() => {
    seconds += 1
    const size = alive()
    idle = size === last ? idle + 1 : 0
    last = size
    if (seconds % reportEveryS === 0 && arrived() > 0) report(arrived())
    if (idle >= patienceS) stop()
  }, 1000)
}

/** In decimal megabytes, as file managers and browsers show them. */
export function megabytes(bytes: number): number {
  return Math.round(bytes / 1e6)
}

function firstLineOf(errors: string): string | undefined {
  const line = errors.split('\n').find((each) => each.trim() !== '')
  return line?.trim().slice(0, 200)
}

function sizeBelow(folder: string): number {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => statSync(join(folder, name), { throwIfNoEntry: false })?.size ?? 0)
    .reduce((sum, size) => sum + size, 0)
}

function noteFile(root: string): string {
  return join(root, 'dist/electron-failed.json')
}
