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

/** What walking along the chains found. */
export interface Walk {
  readonly builds: number
  readonly entries: number
  /** Over the heads of all builds walked, in the order of their ids: 64 hexadecimal digits. */
  readonly head: string
  readonly breaks: readonly Break[]
}

export interface Walking {
  /** Walks this build alone; all of them when null. */
  readonly only: string | null
  readonly signal: AbortSignal
  readonly onProgress: (builds: number, of: number) => void
}

/** No longer than this is anything else kept waiting, in milliseconds: a frame of the window is about as long. */
const sliceMs = 15
const rowsAtOnce = 100

/**
 * Follows the chain of every build and checks the specs they rest on, in slices, so that whoever works on meanwhile does
 * not notice. Null when it was stopped. Throws what SQLite throws at a page that cannot be read.
 */
export async function walkRecord(db: Database, { only, signal, onProgress }: Walking): Promise<Walk | null> {
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
  const listed = db.prepare<[string], { spec_sha256: string; text: string }>(
    'SELECT spec_sha256, text FROM build JOIN spec ON spec.sha256 = build.spec_sha256 WHERE id = ?',
  )
  const soundSpecs = new Set<string>()
  const breaks: Break[] = []
  const heads = createHash('sha256')
  let builds = 0
  let entries = 0
  let sliceEnds = performance.now() + sliceMs

  const next = (last: string): string | null => nextBuild.get({ last }) ?? null
  for (let build = only ?? next(''); build !== null; build = only === null ? next(build) : null) {
    let previous: string | null = null
    let place = 0
    let broken = false
    for (
      let some = rows.all(build, 0, rowsAtOnce);
      some.length > 0;
      some = rows.all(build, some.at(-1)?.seq ?? 0, rowsAtOnce)
    ) {
      for (const entry of some) {
        place += 1
        if (!broken && !follows(build, place, previous, entry)) {
          breaks.push({ build, entry: place })
          broken = true
        }
        previous = entry.sha256
      }
      if (performance.now() < sliceEnds) continue
      await setImmediate()
      if (signal.aborted) return null
      sliceEnds = performance.now() + sliceMs
    }
    if (place === 0) breaks.push({ build, entry: 1 })
    const spec = listed.get(build)
    if (spec === undefined || (!soundSpecs.has(spec.spec_sha256) && sha256(spec.text) !== spec.spec_sha256))
      breaks.push({ build, entry: null })
    else soundSpecs.add(spec.spec_sha256)
    heads.update(`${build} ${place} ${previous ?? ''}\n`)
    entries += place
    builds += 1
    onProgress(builds, of)
  }
  return { builds, entries, head: heads.digest('hex'), breaks }
}
