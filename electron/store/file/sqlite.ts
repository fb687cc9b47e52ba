import Database from 'better-sqlite3'
import { problem } from '../../../core/problem/index.ts'
import type { Outcome, Problem } from '../../../core/problem/index.ts'
import { codeOf } from './code-of.ts'
import type { FileWatch } from './file-watch.ts'
import { whyClosed } from './why-closed.ts'

export type { Database, Statement } from 'better-sqlite3'

/** Stands in the file's header: "Bdpl". By it a record is distinguished from any other SQLite file. */
export const applicationId = 0x4264706c

/** A database that is not a record: nothing of it may be changed, not even the mode of its journal. */
class ForeignDatabase extends Error {
  readonly code = 'FOREIGN_DATABASE'
}

/**
 * Opens the file with what the record needs of SQLite. `locking_mode` is set before the first access, so that the lock
 * is the operating system's on the file itself: a second host is refused, and a killed one leaves no lock behind.
 */
export function connect(file: string): Database.Database {
  const db = new Database(file, { timeout: 250 })
  try {
    db.pragma('locking_mode = EXCLUSIVE')
    db.pragma('trusted_schema = OFF')
    db.pragma('recursive_triggers = ON') // else INSERT OR REPLACE deletes past the trigger that refuses DELETE
    db.pragma('foreign_keys = ON')
    db.pragma('cell_size_check = ON')
    db.pragma('cache_size = -2000') // 2 MB, as SQLite has it by itself: the system keeps the pages anyway, and the host stays small
    const id = db.pragma('application_id', { simple: true }) // the first read takes the lock, and finds what is no database
    if (id !== applicationId && db.pragma('page_count', { simple: true }) !== 0) throw new ForeignDatabase()
    db.pragma('journal_mode = WAL')
    db.pragma('synchronous = FULL') // after WAL, which better-sqlite3 is built to drop to NORMAL
    db.prepare('SELECT count(*) FROM sqlite_schema').get()
    if (db.pragma('synchronous', { simple: true }) !== 2)
      throw new Error('SQLite did not keep synchronous=FULL')
    return db
  } catch (error) {
    db.close()
    throw error
  }
}

/** The problem that an error of SQLite stands for, where it is one that can be expected; null for a bug. */
export function fileProblem(error: unknown, file: string, folder: string): Problem | null {
  const code = codeOf(error)
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED'))
    return problem('record-in-use', { folder })
  if (code === 'FOREIGN_DATABASE') return problem('record-of-another-program', { file })
  if (code === 'SQLITE_NOTADB') return problem('record-not-a-database', { file })
  if (code.startsWith('SQLITE_CORRUPT')) return problem('record-damaged', { file, found: 'pages' })
  if (code === 'EIO') return problem('record-damaged', { file, found: 'disk' })
  if (
    /^SQLITE_(CANTOPEN|READONLY|PERM)/.test(code) ||
    /^E(ACCES|PERM|ROFS|NOTDIR|EXIST|NOENT|LOOP|NAMETOOLONG|INVAL|ISDIR)$/.test(code)
  )
    return problem('data-folder-closed', { folder, why: whyClosed(folder) })
  return writeProblem(error)
}

/** The problem that a refused write stands for; null for a bug. The transaction was rolled back. */
function writeProblem(error: unknown): Problem | null {
  const code = codeOf(error)
  if (code === 'SQLITE_FULL' || code === 'ENOSPC') return problem('record-not-saved', { reason: 'disk-full' })
  if (/^SQLITE_(READONLY|CANTOPEN)/.test(code)) return problem('record-not-saved', { reason: 'read-only' })
  if (/^SQLITE_(IOERR|CORRUPT|NOTADB)/.test(code))
    return problem('record-not-saved', { reason: 'disk-fault' })
  return null
}

/** Carries out a write. The answer comes when it is on disk, or nothing of it is. */
export type Write = <Value>(write: () => Outcome<Value>) => Outcome<Value>

/**
 * Carries out writes to a record whose files `watch` looks at, before and after each: what SQLite writes into a file that
 * was deleted or moved away is in no folder any more, and SQLite does not notice.
 */
export function writerOn(watch: FileWatch): Write {
  return (write) => {
    const before = watch()
    if (before !== null) return { ok: false, problem: before }
    try {
      const outcome = write()
      const after = watch()
      return after === null ? outcome : { ok: false, problem: after }
    } catch (error) {
      const problem = watch() ?? writeProblem(error)
      if (problem === null) throw error
      return { ok: false, problem }
    }
  }
}
