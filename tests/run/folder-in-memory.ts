import { mkdtempSync, readFileSync, rmSync, statfsSync } from 'node:fs'
import { join } from 'node:path'

const place = '/dev/shm'
/** By `statfs(2)`. */
const tmpfs = 0x01021994
const enoughBytes = 4 * 1024 ** 3

/**
 * A folder in memory for what tests write, gone with this process; null where the machine has none that is large enough or none
 * that programs may be run from. Each write of a record waits until the disk has it, and that was a third of what its tests took.
 */
export function folderInMemory(): string | null {
  const folder = hasRoom() && mayRunPrograms() ? made() : null
  if (folder === null) return null
  process.once('exit', () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 }))
  for (const [signal, code] of [
    ['SIGINT', 130],
    ['SIGTERM', 143],
  ] as const)
    process.once(signal, () => process.exit(code))
  return folder
}

function made(): string | null {
  try {
    return mkdtempSync(join(place, 'bedplate-tests-'))
  } catch {
    return null
  }
}

function hasRoom(): boolean {
  try {
    const { type, bavail, bsize } = statfsSync(place)
    return type === tmpfs && bavail * bsize >= enoughBytes
  } catch {
    return false
  }
}

function mayRunPrograms(): boolean {
  try {
    const mounted = readFileSync('/proc/mounts', 'utf8')
      .split('\n')
      .find((line) => line.split(' ')[1] === place)
    return mounted !== undefined && !mounted.split(' ')[3]!.split(',').includes('noexec')
  } catch {
    return false
  }
}
