import {
  existsSync,
  mkdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { hostname } from 'node:os'
import { join } from 'node:path'

/** Plays a disk that has no symbolic links, as FAT and exFAT have none. */
export const noLinksVariable = 'STAND_IN_NO_LINKS'

interface Holder {
  isShutDown(): boolean
  heard(argv: readonly string[], cwd: string, data: unknown): void
}

interface Note {
  readonly argv: readonly string[]
  readonly cwd: string
  readonly data: unknown
}

/** Chromium waits 20 s for the other process to answer. */
const waitsMs = 20_000

/**
 * The lock on a user data folder: a symbolic link named SingletonLock, whose target is HOST-PID. Where it cannot be made,
 * and nobody holds it, as on FAT and exFAT, there is no lock: the answer is the same `false` as where somebody has it.
 * Chromium: chrome/browser/process_singleton_posix.cc; Electron: App::RequestSingleInstanceLock
 *
 * Answers with what lets go of it, or `null`. (Chromium tells the other over a socket; here it is a note and a signal.)
 */
export function takeLock(folder: string, data: unknown, holder: Holder): (() => void) | null {
  mkdirSync(folder, { recursive: true })
  if (process.env[noLinksVariable] !== undefined) return null
  const lock = join(folder, 'SingletonLock')
  for (let attempts = 0; attempts < 2; attempts += 1) {
    try {
      symlinkSync(`${hostname()}-${process.pid}`, lock)
      return hold(folder, lock, holder)
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') return null // LOCK_ERROR
    }
    const other = Number(readlinkSync(lock).split('-').at(-1))
    if (!isAlive(other)) rmSync(lock, { force: true })
    else if (tellOther(folder, other, data) === 'told') return null // PROCESS_NOTIFIED
    // Else the other is shutting down: 'it is safe to start', and the lock is tried for once more.
  }
  return null // LOCK_ERROR: it is there still
}

function hold(folder: string, lock: string, holder: Holder): () => void {
  const listen = (): void => {
    const notes = join(folder, `SingletonNote-${process.pid}`)
    const { argv, cwd, data } = JSON.parse(readFileSync(notes, 'utf8')) as Note
    rmSync(notes)
    writeFileSync(`${notes}-answer`, holder.isShutDown() ? 'shutting down' : 'told')
    if (!holder.isShutDown()) holder.heard(argv, cwd, data)
  }
  const letGo = (): void => {
    process.off('SIGUSR2', listen)
    rmSync(lock, { force: true })
  }
  process.on('SIGUSR2', listen)
  process.once('exit', letGo)
  return letGo
}

function tellOther(folder: string, pid: number, data: unknown): string {
  const note = join(folder, `SingletonNote-${pid}`)
  writeFileSync(note, JSON.stringify({ argv: asToldToOther(process.argv), cwd: process.cwd(), data }))
  process.kill(pid, 'SIGUSR2')
  for (let waited = 0; waited < waitsMs; waited += 20) {
    if (existsSync(`${note}-answer`)) {
      const answer = readFileSync(`${note}-answer`, 'utf8')
      rmSync(`${note}-answer`)
      return answer
    }
    if (!isAlive(pid)) return 'shutting down'
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20)
  }
  return 'told'
}

/** base::CommandLine puts all switches before all other words, so that `--data DIR` falls apart on the way. */
function asToldToOther(argv: readonly string[]): readonly string[] {
  const [program = '', ...words] = argv
  const switches = words.filter((word) => word.startsWith('-'))
  return [program, ...switches, ...words.filter((word) => !word.startsWith('-'))]
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch {
    return false
  }
}
