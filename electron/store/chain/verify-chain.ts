import { createHash } from 'node:crypto'
import { setImmediate } from 'node:timers/promises'
import { numberWord } from '../builds.ts'
import { bodyIn, sha256 } from './chain.ts'
import type { StoredEntry } from './chain.ts'
import { differences } from '../lists.ts'
import { isOfThisVersion, listingAfter } from '../listing.ts'
import type { Listing } from '../listing.ts'
import { photosOn } from '../photos.ts'
import type { PhotoState } from '../photos.ts'
import type { Database } from '../file/sqlite.ts'
import { witnessesOn } from './witnesses.ts'
import type { Witness } from './witnesses.ts'

/** Where the record is not as it was confirmed. `build` is '' for what is about the record as a whole. */
export type Break = { readonly build: string } & (
  | { readonly kind: 'entry'; readonly entry: number }
  /** The text of the spec is not the one its hash was made of; or it is not there at all. */
  | { readonly kind: 'spec-altered' | 'spec-lost' }
  /** The list has the build rest on another spec than its first entry names. */
  | { readonly kind: 'spec-swapped' }
  /** The list says something else of the build than its entries do. */
  | { readonly kind: 'list'; readonly columns: readonly (keyof Listing)[] }
  /** The entries are there, the build's row is not. */
  | { readonly kind: 'unlisted'; readonly name: string; readonly serial: string }
  /** A number was given and no build has it. */
  | { readonly kind: 'number-missing'; readonly number: string }
  /** A head that was given out is not the build's at that entry. */
  | { readonly kind: 'witness'; readonly witness: Witness }
)

/** A photo whose bytes are not those that an entry names, or not there. The entries are as they were confirmed all the same. */
export interface PhotoBreak {
  readonly build: string
  readonly entry: number
  /** The step's id; null for a photo of a finished build. */
  readonly step: string | null
  readonly state: 'damaged' | 'missing'
}

/** What following the chains found. */
export interface ChainVerification {
  readonly builds: number
  readonly entries: number
  /** 64 hexadecimal digits: of one build its own head, else over the heads of all, in the order of their ids. */
  readonly head: string
  /** Heads that were given out and are the builds' own still. */
  readonly witnesses: number
  readonly breaks: readonly Break[]
  readonly photoBreaks: readonly PhotoBreak[]
}

export interface VerifyOptions {
  /** Verifies this build alone; all of them when null. */
  readonly only: string | null
  readonly signal: AbortSignal
  readonly onProgress: (builds: number, of: number) => void
  /** Heads that are kept outside the record, beside those within. */
  readonly witnesses?: readonly Witness[]
}

/**
 * Entries that are looked at between two answers to other requests. A hundred take one or two milliseconds;
 * a frame of the window is sixteen long.
 */
const entriesAtOnce = 100

/**
 * Follows the chain of every build, checks the spec it rests on, and holds the list of builds and the heads that were
 * given out against it; in slices, so that other requests do not notice. Null when it was stopped. Throws
 * what SQLite throws at a page that cannot be read.
 */
export async function verifyChain(
  db: Database,
  { only, signal, onProgress, witnesses: outside = [] }: VerifyOptions,
): Promise<ChainVerification | null> {
  await setImmediate()
  if (signal.aborted) return null
  const of = only === null ? Number(db.prepare('SELECT count(*) FROM build').pluck().get()) : 1
  // A build that lost all its entries is still listed, and entries may have lost their build.
  const nextBuild = db
    .prepare<{ last: string }, string | null>(
      `SELECT min(id) FROM (
        SELECT min(id) AS id FROM build WHERE id > @last
        UNION ALL SELECT * FROM (SELECT build FROM event WHERE build > @last ORDER BY build LIMIT 1)
      )`,
    )
    .pluck()
  const rows = db.prepare<[string, number, number], StoredEntry>(
    'SELECT seq, body, sha256 FROM event WHERE build = ? AND seq > ? ORDER BY seq LIMIT ?',
  )
  const rowOf = db.prepare<[string], Listing>('SELECT * FROM build WHERE id = ?')
  const specState = specStates(db)
  const kept = [...witnessesOn(db).all(), ...outside]
  const breaks: Break[] = []
  const photoBreaks: PhotoBreak[] = []
  const photoState = photosIn(db)
  const heads = createHash('sha256')
  let builds = 0
  let entries = 0
  let confirmed = 0
  let last: string | null = null

  const next = (last: string): string | null => nextBuild.get({ last }) ?? null
  for (let build = only ?? next(''); build !== null; build = only === null ? next(build) : null) {
    const wanted = new Map<number, Witness[]>()
    for (const witness of kept)
      if (witness.build === build)
        wanted.set(witness.entries, [...(wanted.get(witness.entries) ?? []), witness])
    let previous: string | null = null
    let place = 0
    let broken = false
    let newer = false
    let listing: Listing | null = null
    const takenOver = new Set<string>()
    for (
      let some = rows.all(build, 0, entriesAtOnce);
      some.length > 0;
      some = rows.all(build, some.at(-1)?.seq ?? 0, entriesAtOnce)
    ) {
      for (const entry of some) {
        place += 1
        const body = broken ? null : bodyIn(build, place, previous, entry)
        if (!broken && body === null) {
          breaks.push({ build, kind: 'entry', entry: place })
          broken = true
        }
        newer ||= body !== null && !isOfThisVersion(body.event)
        if (body !== null && !newer && body.event.type === 'photo-added') {
          const { step, photo } = body.event
          const state = photoState(photo?.sha256 ?? '') // an entry that no program wrote may have none
          if (state !== 'good') photoBreaks.push({ build, entry: place, step, state })
          await setImmediate()
        }
        // What was withdrawn may be gone: an export does not carry it.
        if (body !== null && !newer && body.event.type === 'photo-withdrawn') {
          const of = body.event.entry
          const gone = photoBreaks.findIndex((found) => found.build === build && found.entry === of)
          if (gone >= 0) photoBreaks.splice(gone, 1)
        }
        if (body !== null && !newer && body.event.type === 'revision-taken-over')
          takenOver.add(body.event.specSha256)
        if (body !== null && !newer) listing = listingAfter(listing, body)
        for (const witness of wanted.get(place) ?? []) {
          if (entry.sha256.startsWith(witness.head)) confirmed += 1
          else breaks.push({ build, kind: 'witness', witness })
        }
        previous = entry.sha256
      }
      await setImmediate()
      if (signal.aborted) return null
    }
    if (place === 0) breaks.push({ build, kind: 'entry', entry: 1 })
    for (const [at, some] of wanted)
      if (at > place) breaks.push(...some.map((witness) => ({ build, kind: 'witness', witness }) as const))
    const row = rowOf.get(build)
    const hash = listing?.spec_sha256 ?? row?.spec_sha256
    for (const each of hash === undefined ? takenOver : [hash, ...takenOver]) {
      const state = specState(each)
      if (state !== 'good') breaks.push({ build, kind: state })
    }
    if (row === undefined)
      breaks.push({ build, kind: 'unlisted', name: listing?.name ?? '', serial: listing?.serial ?? '' })
    else if (listing !== null && !broken) {
      const columns = differences(row, listing)
      if (columns.includes('spec_sha256')) breaks.push({ build, kind: 'spec-swapped' })
      const others = columns.filter((column) => column !== 'spec_sha256')
      if (others.length > 0) breaks.push({ build, kind: 'list', columns: others })
    }
    heads.update(`${build} ${place} ${previous ?? ''}\n`)
    entries += place
    builds += 1
    last = previous
    onProgress(builds, of)
  }
  if (only === null) {
    breaks.push(...missingNumbers(db))
    const known = new Set(db.prepare<[], string>('SELECT DISTINCT build FROM event').pluck().all())
    for (const witness of kept) {
      if (witness.build === '') {
        if (witness.entries <= entries) confirmed += 1
        else breaks.push({ build: '', kind: 'witness', witness })
      } else if (!known.has(witness.build)) breaks.push({ build: witness.build, kind: 'witness', witness })
    }
  }
  return {
    builds,
    entries,
    head: only === null ? heads.digest('hex') : (last ?? ''),
    witnesses: confirmed,
    breaks: once(breaks),
    photoBreaks,
  }
}

/** A backup of an earlier form has no place for photos, and no entry that names one. */
function photosIn(db: Database): (sha256: string) => PhotoState {
  const hasPlace = db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'photo'").get()
  return hasPlace === undefined ? () => 'missing' : photosOn(db).stateOf
}

/** The texts are long and many builds rest on one, so each is hashed once. */
function specStates(db: Database): (hash: string) => 'good' | 'spec-altered' | 'spec-lost' {
  const textOf = db.prepare<[string], string>('SELECT text FROM spec WHERE sha256 = ?').pluck()
  const states = new Map<string, 'good' | 'spec-altered' | 'spec-lost'>()
  return (hash) => {
    const text = textOf.get(hash)
    const state =
      states.get(hash) ?? (text === undefined ? 'spec-lost' : sha256(text) === hash ? 'good' : 'spec-altered')
    states.set(hash, state)
    return state
  }
}

/** Builds are numbered without a gap within their year, and none is ever removed. */
function missingNumbers(db: Database): readonly Break[] {
  const numbers = db.prepare<[], { year: number; ordinal: number }>(
    'SELECT year, ordinal FROM build ORDER BY year, ordinal',
  )
  const missing: Break[] = []
  let [year, expected] = [0, 1]
  for (const row of numbers.all()) {
    if (row.year !== year) [year, expected] = [row.year, 1]
    for (; expected < row.ordinal && missing.length < mostMissing; expected += 1)
      missing.push({ build: '', kind: 'number-missing', number: `${year}-${numberWord(expected)}` })
    expected = row.ordinal + 1
  }
  return missing
}

/** An ordinal that was set to a billion is reported once or twice, not a billion times. */
const mostMissing = 20

/** A head that is kept within and outside the record is reported once. */
function once(breaks: readonly Break[]): readonly Break[] {
  return [...new Map(breaks.map((found) => [JSON.stringify(found), found])).values()]
}
