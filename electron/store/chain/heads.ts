import Database from 'better-sqlite3'
import type { Database as Open } from '../file/sqlite.ts'

/** A build by the hashes of its entries, the first one first. */
export interface Head {
  readonly build: string
  /** What a person calls it. */
  readonly title: string
  readonly hashes: readonly string[]
}

/** All builds of a closed record that was checked before. */
export function headsIn(file: string): readonly Head[] {
  const db = new Database(file, { readonly: true })
  try {
    const hashes = db
      .prepare<[string], string>('SELECT sha256 FROM event WHERE build = ? ORDER BY seq')
      .pluck()
    return db
      .prepare<[], { id: string; year: number; ordinal: number; name: string }>(
        'SELECT id, year, ordinal, name FROM build ORDER BY id',
      )
      .all()
      .map(({ id, name }) => ({ build: id, title: `“${name}”`, hashes: hashes.all(id) }))
  } finally {
    db.close()
  }
}

/** The entry whose hash begins with these 16 digits, and how many its build has; null where there is none. */
export function entryOfCode(
  db: Open,
  code: string,
): { readonly build: string; readonly entry: number; readonly of: number } | null {
  const found = db
    .prepare<{ code: string }, { build: string; entry: number; of: number }>(
      `SELECT e.build, e.seq AS entry, (SELECT max(seq) FROM event WHERE build = e.build) AS "of"
       FROM event AS e WHERE e.sha256 >= @code AND e.sha256 < @code || 'g' LIMIT 1`,
    )
    .get({ code })
  return found ?? null
}
