import { createHash } from 'node:crypto'
import { setImmediate } from 'node:timers/promises'
import { follows, sha256 } from './chain.ts'
import type { StoredEntry } from './chain.ts'
import type { Database } from './sqlite.ts'

/** Where a build is not as it was confirmed: the first such entry, or null for the spec it rests on. */
export interface Break {
  readonly build: string
  readonly entry: number | null
}

/** What following the chains found. */
export interface ChainVerification {
  readonly builds: number
  readonly entries: number
  /** 64 hexadecimal digits: of one build its own head, else over the heads of all, in the order of their ids. */
  readonly head: string
  readonly breaks: readonly Break[]
}

export interface VerifyOptions {
  /** Walks this build alone; all of them when null. */
  readonly only: string | null
  readonly signal: AbortSignal
  readonly onProgress: (builds: number, of: number) => void
}

/**
 * Entries that are looked at between two answers to whoever works on meanwhile. A hundred take one or two milliseconds;
 * a frame of the window is sixteen long.
 */
const entriesAtOnce = 100

/**
 * Follows the chain of every build and checks the specs they rest on, in slices, so that whoever works on meanwhile does
 * not notice. Null when it was stopped. Throws what SQLite throws at a page that cannot be read.
 */
export async function verifyChain(
  db: Database,
  { only, signal, onProgress }: VerifyOptions,
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
  const specOf = db.prepare<[string], string>('SELECT spec_sha256 FROM build WHERE id = ?').pluck()
  const textOf = db.prepare<[string], string>('SELECT text FROM spec WHERE sha256 = ?').pluck()
  /** By the hash of the spec: its text is long, and many builds rest on one. */
  const sound = new Map<string, boolean>()
  const isSound = (spec: string): boolean => {
    const known = sound.get(spec) ?? sha256(textOf.get(spec) ?? '') === spec
    sound.set(spec, known)
    return known
  }
  const breaks: Break[] = []
  const heads = createHash('sha256')
  let builds = 0
  let entries = 0
  let last: string | null = null

  const next = (last: string): string | null => nextBuild.get({ last }) ?? null
  for (let build = only ?? next(''); build !== null; build = only === null ? next(build) : null) {
    let previous: string | null = null
    let place = 0
    let broken = false
    for (
      let some = rows.all(build, 0, entriesAtOnce);
      some.length > 0;
      some = rows.all(build, some.at(-1)?.seq ?? 0, entriesAtOnce)
    ) {
      for (const entry of some) {
        place += 1
        if (!broken && !follows(build, place, previous, entry)) {
          breaks.push({ build, entry: place })
          broken = true
        }
        previous = entry.sha256
      }
      await setImmediate()
      if (signal.aborted) return null
    }
    if (place === 0) breaks.push({ build, entry: 1 })
    if (!isSound(specOf.get(build) ?? '')) breaks.push({ build, entry: null })
    heads.update(`${build} ${place} ${previous ?? ''}\n`)
    entries += place
    builds += 1
    last = previous
    onProgress(builds, of)
  }
  return { builds, entries, head: only === null ? heads.digest('hex') : (last ?? ''), breaks }
}
