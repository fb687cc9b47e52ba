import { statSync } from 'node:fs'
import { problem } from '../../core/problem/index.ts'
import type { Problem } from '../../core/problem/index.ts'

/** Whether the files that SQLite holds open are still the ones that stand in the folder. */
export interface FileWatch {
  /** What is not as it was left; null while all is. Two look-ups of the system, some microseconds. */
  readonly problem: () => Problem | null
  /** Takes in what a write has made of them. */
  readonly note: () => void
}

interface Known {
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
  const files = [file, `${file}-wal`]
  const known = new Map<string, Known>()
  const note = (): void => {
    for (const each of files) {
      const found = statSync(each, { bigint: true, throwIfNoEntry: false })
      if (found !== undefined) known.set(each, { ...identityOf(known.get(each) ?? found), size: found.size })
    }
  }
  note()
  return {
    note,
    problem: () => {
      for (const each of files) {
        const before = known.get(each)
        if (before === undefined) continue
        const fault = faultOf(each, before)
        if (fault !== null) return problem('record-not-in-place', { file: each, fault })
      }
      return null
    },
  }
}

/** For a record in memory, or one that nobody can take away. */
export const unwatched: FileWatch = { problem: () => null, note: () => undefined }

function identityOf({ dev, ino }: Known): Pick<Known, 'dev' | 'ino'> {
  return { dev, ino }
}

function faultOf(file: string, before: Known): 'gone' | 'replaced' | 'shortened' | null {
  let now: Known | undefined
  try {
    now = statSync(file, { bigint: true, throwIfNoEntry: false })
  } catch {
    return 'gone' // the folder cannot be looked into, or the disk was taken away
  }
  if (now === undefined) return 'gone'
  if (now.dev !== before.dev || now.ino !== before.ino) return 'replaced'
  return now.size < before.size ? 'shortened' : null
}
