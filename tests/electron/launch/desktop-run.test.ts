import { spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { problem, textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { runDesktop, type DesktopRun } from '../../../electron/launch/desktop-run.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'desktop-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const noted = (name: string) => join(folder, name)
const read = (name: string) => readFileSync(noted(name), 'utf8')

/** Plays Electron's program with what a shell can do of it. */
function program(script: string): string {
  const file = noted('program')
  writeFileSync(file, `#!/bin/sh\ncd ${folder}\n${script}\n`, { mode: 0o755 })
  return file
}

const shows = 'printf shown > "$BEDPLATE_SIGN"'
const longMs = 60_000

function run(script: string, windowMs = longMs): Promise<DesktopRun> {
  return runDesktop(
    { binary: program(script), words: ['/app', '--data', '/data'], env: process.env },
    { windowMs, sameSignalMs: longMs },
  )
}

async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await after(20)
}

/** The process with this number is there. A zombie is not: it has ended, and waits for somebody to ask how. */
function isAlive(pid: string): boolean {
  try {
    return !/^\d+ \(.*\) Z/.test(readFileSync(`/proc/${pid.trim()}/stat`, 'utf8'))
  } catch {
    return false
  }
}

describe.skipIf(process.platform === 'win32')('the desktop host', () => {
  it('is told what it was asked for, and where to leave its sign', async () => {
    await run(`echo "$*" > words; dirname "$BEDPLATE_SIGN" > sign-folder; ${shows}`)
    expect(read('words')).toBe('/app --data /data\n')
    expect(existsSync(read('sign-folder').trim())).toBe(false) // nothing of it stays behind
  })

  it('is never run as a plain Node, whatever the surroundings say', async () => {
    const binary = program(`echo "\${ELECTRON_RUN_AS_NODE-unset}" > as-node; ${shows}`)
    await runDesktop({ binary, words: [], env: { ...process.env, ELECTRON_RUN_AS_NODE: '1' } })
    expect(read('as-node')).toBe('unset\n')
  })

  it('has ended with its own code once its window was seen, badly or well', async () => {
    expect(await run(`${shows}; exit 0`)).toEqual({ kind: 'ended', code: 0 })
    expect(await run(`${shows}; exit 7`)).toEqual({ kind: 'ended', code: 7 })
  })

  it('may take as long as it needs, once its window was seen', async () => {
    expect(await run(`${shows}; sleep 1; exit 0`, 300)).toEqual({ kind: 'ended', code: 0 })
  })

  it('showed no window when it ends before, even with code 0', async () => {
    expect(await run('exit 0')).toEqual({
      kind: 'no-window',
      why: { code: 'electronEnded', facts: { code: 0 } },
    })
    expect(await run('kill -ABRT $$')).toEqual({
      kind: 'no-window',
      why: { code: 'electronEnded', facts: { code: null } },
    })
  })

  it('says itself why it shows none', async () => {
    const why = problem('still-ending', { folder: '/data' })
    writeFileSync(noted('left'), `refused: ${JSON.stringify(why)}`)
    const answer = await run('cp left "$BEDPLATE_SIGN"; exit 1')
    expect(answer).toEqual({ kind: 'no-window', why: { code: 'desktopGaveUp', facts: { why } } })
    expect(textIn(en, en.phrases, { code: 'desktopGaveUp', facts: { why } })).toBe(
      'A Bedplate on /data is still ending. Wait until it has, then start again',
    )
  })

  it('did not start when it is no program', async () => {
    const file = noted('picture.png')
    writeFileSync(file, 'PNG')
    const answer = await runDesktop({ binary: file, words: [], env: process.env })
    expect(answer).toEqual({
      kind: 'no-window',
      why: { code: 'electronNotStarted', facts: { message: expect.stringContaining('EACCES') as string } },
    })
  })

  it('that shows no window in time is ended with all that it started', async () => {
    const answer = await run('trap "" TERM; sleep 1000 & echo $! > child; echo $$ > self; wait', 3000)
    expect(answer).toEqual({ kind: 'no-window', why: { code: 'noWindowInTime', facts: { seconds: 3 } } })
    // Both were sent the signal; each ends when the system comes to it.
    await until(() => !isAlive(read('child')))
    expect([read('self'), read('child')].map(isAlive)).toEqual([false, false])
  })
})

/** Starts the runner as the foreground group of a terminal. */
function inTerminal(script: string, sameSignalMs: number, windowMs = longMs) {
  const runner = join(import.meta.dirname, 'run-desktop.ts')
  const child = spawn(process.execPath, [runner, program(script), String(windowMs), String(sameSignalMs)], {
    detached: true,
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  let output = ''
  child.stdout.on('data', (text) => (output += String(text)))
  return {
    ready: () => until(() => existsSync(noted('ready'))),
    /** Ctrl+C: every process of the group gets the signal. */
    interrupt: () => process.kill(-(child.pid ?? 0), 'SIGINT'),
    /** What a launcher before this one does in addition. */
    passOn: () => child.kill('SIGINT'),
    ended: new Promise<DesktopRun>((resolve) =>
      child.once('close', () => resolve(JSON.parse(output) as DesktopRun)),
    ),
  }
}

// The first signal is taken gracefully by Electron, the second kills it: so every one that arrives is counted.
const counts = 'trap "echo got >> signals" INT TERM'
const goesOn = 'touch ready; while [ ! -e leave ]; do sleep 0.05; done; exit 0'

describe.skipIf(process.platform === 'win32')('Ctrl+C', () => {
  it('reaches the desktop host once, and no other host is started after it', async () => {
    const terminal = inTerminal(`${counts}; ${shows}; ${goesOn}`, longMs)
    await terminal.ready()
    terminal.interrupt()
    terminal.passOn()
    await until(() => existsSync(noted('signals')))
    await after(300) // a second one would have come by then; the count below is what is asserted
    writeFileSync(noted('leave'), '')
    expect(await terminal.ended).toEqual({ kind: 'interrupted', code: 0 })
    expect(read('signals')).toBe('got\n')
  })

  it('before the window was seen is no reason to start another host either', async () => {
    const terminal = inTerminal(`trap "exit 130" INT; ${goesOn}`, longMs)
    await terminal.ready()
    terminal.interrupt()
    expect(await terminal.ended).toEqual({ kind: 'interrupted', code: 130 })
  })

  it('pressed again later ends one that hangs', async () => {
    const terminal = inTerminal(`trap "" INT; ${shows}; ${goesOn}`, 0)
    await terminal.ready()
    terminal.interrupt()
    await after(50)
    terminal.interrupt()
    expect(await terminal.ended).toEqual({ kind: 'interrupted', code: 1 })
  })
})
