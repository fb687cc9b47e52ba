import {
  mentionsOf,
  readEvent,
  revisionSpans,
  type Mention,
  type RecordedEvent,
} from '../../core/builds/index.ts'
import { namesInAllLanguages, readSpec, type EngineSpec, type NamesOf } from '../../core/engine/index.ts'
import { buildsOn } from './builds.ts'
import { sha256 } from './chain/chain.ts'
import type { EntryBody } from './chain/chain.ts'
import { isOfThisVersion, listingAfter } from './listing.ts'
import type { Listing } from './listing.ts'
import type { Database } from './file/sqlite.ts'

/** The words that entries add to their build; none from entries that this version cannot read. */
export function mentionsIn(
  spec: EngineSpec,
  namesOf: NamesOf,
  entries: readonly Pick<RecordedEvent, 'person' | 'event'>[],
): readonly Mention[] {
  return entries.flatMap(({ person, event }) => {
    const read = readEvent(event)
    return read.kind === 'known' ? mentionsOf(spec, namesOf, { person, event: read.event }) : []
  })
}

/** An entry's content; null where it is no longer readable, which verifying reports. */
function entryIn(body: string): EntryBody | null {
  try {
    return JSON.parse(body) as EntryBody
  } catch {
    return null
  }
}

/**
 * Makes the list of builds, and the words they are found by, again from the entries, in the transaction of the caller.
 * The number of a build is the bench's own and stays; a build that has lost its place gets the next number of its year.
 * A row without entries stays too: that they are gone is reported by verifying. Where each build stands is found when it is
 * next listed. Answers how many rows it made or changed.
 */
export function rebuildLists(db: Database): number {
  const builds = buildsOn(db)
  const ids = db.prepare<[], string>('SELECT DISTINCT build FROM event ORDER BY build').pluck()
  const bodies = db.prepare<[string], string>('SELECT body FROM event WHERE build = ? ORDER BY seq').pluck()
  const specs = db.prepare<[string], { text: string }>('SELECT text FROM spec WHERE sha256 = ?')
  const rowOf = db.prepare<[string], Listing>('SELECT * FROM build WHERE id = ?')
  const insert = db.prepare(`
    INSERT INTO build (id, year, ordinal, name, serial, spec_sha256, started_at_utc, finished, voided, flagged)
    VALUES (@id, @year, (SELECT coalesce(max(ordinal), 0) + 1 FROM build WHERE year = @year),
      @name, @serial, @spec_sha256, @started_at_utc, @finished, @voided, @flagged)`)
  const update = db.prepare(`
    UPDATE build SET
      ordinal = CASE year WHEN @year THEN ordinal
        ELSE (SELECT coalesce(max(b.ordinal), 0) + 1 FROM build AS b WHERE b.year = @year) END,
      year = @year, name = @name, serial = @serial, spec_sha256 = @spec_sha256, started_at_utc = @started_at_utc,
      finished = @finished, voided = @voided, flagged = @flagged WHERE id = @id`)
  const forget = db.prepare('DELETE FROM mention WHERE build = ?')
  const describe = db.prepare('UPDATE spec SET engine = ?, demo = ? WHERE sha256 = ?')
  const forgetStandings = db.prepare('UPDATE build SET standing = NULL')
  const described = new Set<string>()

  /** Null for a text that was altered, or is no spec. */
  function specUnder(hash: string): { readonly spec: EngineSpec; readonly namesOf: NamesOf } | null {
    const text = specs.get(hash)?.text
    const read = text === undefined || sha256(text) !== hash ? null : readSpec(text)
    if (text === undefined || !read?.ok) return null
    if (!described.has(hash)) {
      described.add(hash)
      describe.run(read.spec.name, read.spec.source.kind === 'demo' ? 1 : 0, hash)
    }
    return { spec: read.spec, namesOf: namesInAllLanguages(text) }
  }

  /** Each entry in the words of the spec that held at it. */
  function mentionsBySpecs(known: readonly EntryBody[]): readonly Mention[] {
    let from = 0
    return revisionSpans(known).flatMap(({ specSha256, until }) => {
      const some = known.filter(({ seq }) => seq > from && seq <= until)
      from = until
      const held = specUnder(specSha256)
      return held === null ? [] : mentionsIn(held.spec, held.namesOf, some)
    })
  }

  return withoutGuards(db, () => {
    let changed = 0
    forgetStandings.run()
    for (const id of ids.all()) {
      const entries = bodies.all(id).flatMap((body) => entryIn(body) ?? [])
      const newer = entries.findIndex(({ event }) => !isOfThisVersion(event))
      const known = newer < 0 ? entries : entries.slice(0, newer)
      const listing = known.reduce(listingAfter, null)
      if (listing === null || specs.get(listing.spec_sha256) === undefined) continue
      const row = rowOf.get(id)
      if (row === undefined || differences(row, listing).length > 0) {
        ;(row === undefined ? insert : update).run({ id, ...listing })
        changed += 1
      }
      forget.run(id)
      builds.note(id, known, mentionsBySpecs(known))
    }
    return changed
  })
}

/** Where a row of the list is not what the entries say. */
export function differences(row: Listing, listing: Listing): readonly (keyof Listing)[] {
  return (Object.keys(listing) as (keyof Listing)[]).filter((column) => row[column] !== listing[column])
}

/** The guards are made again with the very text they had, so that the schema's digest stays. */
function withoutGuards<Value>(db: Database, change: () => Value): Value {
  const triggers = db
    .prepare<[], { name: string; sql: string }>("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")
    .all()
  for (const { name } of triggers) db.exec(`DROP TRIGGER "${name}"`)
  const value = change()
  for (const { sql } of triggers) db.exec(sql)
  return value
}
