import { join } from 'node:path'
import Database from 'better-sqlite3'
import { recordName } from '../../electron/store/index.ts'

/** Changes a closed record past its guards, as somebody can who has the file and time. The guards are there again after. */
export function alter(inFolder: string, ...changes: readonly string[]): void {
  const db = new Database(join(inFolder, recordName))
  try {
    db.pragma('foreign_keys = OFF')
    const guards = db
      .prepare<[], { name: string; sql: string }>(
        "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'",
      )
      .all()
    for (const { name } of guards) db.exec(`DROP TRIGGER ${name}`)
    for (const change of changes) db.exec(change)
    for (const { sql } of guards) db.exec(sql)
  } finally {
    db.close()
  }
}
