import { statSync } from 'node:fs'
import { problem } from '../../../core/problem/index.ts'
import type { Problem } from '../../../core/problem/index.ts'

/** What is not as it was found last; null while all is. Two look-ups of the system, some microseconds. */
export type FileWatch = () => Problem | null

interface FileIdentity {
  readonly dev: bigint
  readonly ino: bigint
  readonly size: bigint
}

/**
 * Watches the record and its write-ahead log by device, inode and size, from the moment of the call on: SQLite must have
 * opened them. Neither ever gets shorter while SQLite has them open, and the log is there from the first write on. The
 * files themselves are never opened here: to close them again would drop SQLite's locks.
 */
export function watchFiles(file: string): FileWatch {
  const found = new Map<string, FileIdentity>()
  const watch: FileWatch = () => {
    for (const each of [file, `${file}-wal`]) {
      const before = found.get(each)
      const now = find(each)
      const fault = before === undefined ? null : faultOf(before, now)
      if (fault !== null) return problem('record-not-in-place', { file: each, fault })
      if (now !== null) found.set(each, now)
    }
    return null
  }
  watch()
  return watch
}

/** Null where there is no such file, the folder cannot be looked into, or the disk was taken away. */
function find(file: string): FileIdentity | null {
  try {
    return statSync(file, { bigint: true, throwIfNoEntry: false }) ?? null
  } catch {
    return null
  }
}

function faultOf(before: FileIdentity, now: FileIdentity | null): 'gone' | 'replaced' | 'shortened' | null {
  if (now === null) return 'gone'
  if (now.dev !== before.dev || now.ino !== before.ino) return 'replaced'
  return now.size < before.size ? 'shortened' : null
}
