import type { BuildEvent, Mention, RecordedEvent } from '../../core/builds/index.ts'
import { done, refused, type Outcome } from '../../core/problem/index.ts'
import type { Builds } from './builds.ts'
import { seal } from './chain/chain.ts'
import type { StoredEntry } from './chain/chain.ts'
import type { Database, Write } from './file/sqlite.ts'
import type { Photos } from './photos.ts'
import type { AtShop, ShopMarks } from './shop.ts'
import type { KeptSpec, Specs } from './specs.ts'

/** What is added to a build in one go: all of it is on disk, or none. */
export interface Addition {
  readonly build: string
  /** The last entry that the decision rested on; 0 for a build that is only now started. */
  readonly after: number
  readonly events: readonly BuildEvent[]
  readonly person: string
  /** UTC, ISO 8601 with milliseconds. */
  readonly at: string
  /** The words that the events add to those the build is found by. */
  readonly mentions: readonly Mention[]
  /** The bytes of photos that the events name. */
  readonly photos?: readonly Uint8Array[]
}

/** Entries of another record, to be added as they lie there. */
export interface ImportedEntries {
  readonly entries: readonly StoredEntry[]
  /** What they say, up to the first that only a newer program knows. */
  readonly events: readonly RecordedEvent[]
  /** The words that these add to those the build is found by. */
  readonly mentions: readonly Mention[]
  /** Where they came from the archive of the shop: what it is to be known by from now on. */
  readonly atShop?: Partial<AtShop>
}

/** What is kept beside the entries, in the same transaction. */
interface EntryTables {
  readonly specs: Specs
  readonly builds: Builds
  readonly photos: Photos
  readonly shop: ShopMarks
}

/** The entries themselves: added at the end of a build, read in order, never changed. */
export function entriesOn(db: Database, write: Write, { specs, builds, photos, shop }: EntryTables) {
  const insert = db.prepare('INSERT INTO event (build, seq, body, sha256) VALUES (?, ?, ?, ?)')
  const read = db.prepare<[string], StoredEntry>(
    'SELECT seq, body, sha256 FROM event WHERE build = ? ORDER BY seq',
  )
  const readAfter = db.prepare<[string, number, number], StoredEntry>(
    'SELECT seq, body, sha256 FROM event WHERE build = ? AND seq > ? ORDER BY seq LIMIT ?',
  )
  const readHash = db
    .prepare<[string, number], string>('SELECT sha256 FROM event WHERE build = ? AND seq = ?')
    .pluck()
  const readCount = db.prepare<[string], number>('SELECT count(*) FROM event WHERE build = ?').pluck()

  /**
   * The hash that an entry after `after` follows; null for the first of a build. Two look-ups by key: to ask for the last
   * entry of a build costs SQLite ten times as much, and every confirmation waits for it.
   */
  function hashToFollow(build: string, after: number): Outcome<string | null> {
    const previous = readHash.get(build, after) ?? null
    const isLast = readHash.get(build, after + 1) === undefined && (previous === null) === (after === 0)
    return isLast ? done(previous) : refused('build-moved-on', { last: readCount.get(build) ?? 0 })
  }

  const add = db.transaction(
    (
      { build, after, events, person, at, mentions, photos: bytes = [] }: Addition,
      spec: KeptSpec | null,
    ): Outcome<readonly RecordedEvent[]> => {
      if (!/^\d{4}-/.test(at)) return refused('clock-unusable', { at })
      const before = hashToFollow(build, after)
      if (!before.ok) return before
      if (spec !== null) specs.keep(spec)
      for (const each of bytes) photos.keep(each)
      const added: RecordedEvent[] = []
      let previous = before.value
      for (const event of events) {
        const { seq, body, sha256 } = seal({
          build,
          seq: after + added.length + 1,
          at,
          person,
          event,
          previous,
        })
        insert.run(build, seq, body, sha256)
        added.push({ seq, at, person, event, hash: sha256 })
        previous = sha256
      }
      builds.follow(build, added, mentions)
      return done(added)
    },
  )

  const importEntries = db.transaction(
    (
      build: string,
      { entries, events, mentions, atShop }: ImportedEntries,
      kept: readonly KeptSpec[],
    ): Outcome<null> => {
      const before = hashToFollow(build, (entries[0]?.seq ?? 1) - 1)
      if (!before.ok) return before
      for (const spec of kept) specs.keep(spec)
      for (const { seq, body, sha256 } of entries) insert.run(build, seq, body, sha256)
      if (atShop !== undefined) shop.note(build, atShop)
      builds.follow(build, events, mentions)
      return done(null)
    },
  )

  return {
    start: (addition: Addition, spec: KeptSpec) => write(() => add.immediate(addition, spec)),
    append: (addition: Addition) => write(() => add.immediate(addition, null)),
    importEntries: (build: string, imported: ImportedEntries, kept: readonly KeptSpec[]) =>
      write(() => importEntries.immediate(build, imported, kept)),
    entries: (build: string): readonly StoredEntry[] => read.all(build),
    entriesAfter: (build: string, after: number, most: number): readonly StoredEntry[] =>
      readAfter.all(build, after, most),
  }
}
