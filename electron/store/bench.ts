import type { Database } from './file/sqlite.ts'

/** The name of the bench that a record belongs to: 12 hexadecimal digits. '' in a record of a schema before it had one. */
export function benchOf(db: Database): string {
  const has = db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'bench'").get()
  return has === undefined ? '' : (db.prepare<[], string>('SELECT id FROM bench').pluck().get() ?? '')
}
