import { createHash } from 'node:crypto'
import Database from 'better-sqlite3'
import { rebuildLists } from './lists.ts'
import { migrations } from './migrations/index.ts'
import { applicationId } from './file/sqlite.ts'

/** The version of the record's schema that this program writes. */
export const latestSchemaVersion = migrations.length

/** Applies what is missing and computes again what is read off the events, all in one transaction. */
export function migrate(db: Database.Database, upTo = latestSchemaVersion): void {
  const missing = migrations.slice(schemaVersion(db), upTo)
  if (missing.length === 0) return
  db.transaction(() => {
    for (const { version, sql } of missing) {
      db.exec(sql)
      db.pragma(`application_id = ${applicationId}`)
      db.pragma(`user_version = ${version}`)
    }
    if (upTo === latestSchemaVersion) void rebuildLists(db)
  }).exclusive()
}

export function schemaVersion(db: Database.Database): number {
  return Number(db.pragma('user_version', { simple: true }))
}

/**
 * Hash over the definitions of all tables, indexes and triggers. The triggers that keep entries from being changed can
 * themselves be dropped by anyone who can write the file; this finds it.
 */
export function schemaDigest(db: Database.Database): string {
  const definitions = db
    .prepare('SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY type, name')
    .raw()
    .all()
  return createHash('sha256').update(JSON.stringify(definitions)).digest('hex')
}

/** What `expectedSchemaDigest` found: the migrations never change, and every record and backup that is opened asks. */
const expected = new Map<number, string>()

/** The hash that a file of this version has when only the migrations have shaped it. */
export function expectedSchemaDigest(version: number): string {
  const known = expected.get(version)
  if (known !== undefined) return known
  const db = new Database(':memory:')
  try {
    migrate(db, version)
    const digest = schemaDigest(db)
    expected.set(version, digest)
    return digest
  } finally {
    db.close()
  }
}
