import type { RecordedEvent } from '../../core/build/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { Builds } from './builds.ts'
import { seal } from './chain.ts'
import type { StoredEntry } from './chain.ts'
import { writeProblem } from './sqlite.ts'
import type { Database } from './sqlite.ts'
import type { KeptSpec, Specs } from './specs.ts'
import type { Addition } from './store.ts'

/** The entries themselves: added at the end of a build, read in order, never changed. */
export function entriesOn(db: Database, specs: Specs, builds: Builds) {
  const insert = db.prepare('INSERT INTO event (build, seq, body, sha256) VALUES (?, ?, ?, ?)')
  const read = db.prepare<[string], StoredEntry>(
    'SELECT seq, body, sha256 FROM event WHERE build = ? ORDER BY seq',
  )
  const readLast = db.prepare<[string], { seq: number; sha256: string }>(
    'SELECT seq, sha256 FROM event WHERE build = ? ORDER BY seq DESC LIMIT 1',
  )

  const add = db.transaction(
    (
      { build, after, events, person, at }: Addition,
      spec: KeptSpec | null,
    ): Outcome<readonly RecordedEvent[]> => {
      const last = readLast.get(build)
      if ((last?.seq ?? 0) !== after) return refused('build-moved-on', { last: last?.seq ?? 0 })
      if (spec !== null) specs.keep(spec)
      const added: RecordedEvent[] = []
      let previous = last?.sha256 ?? null
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
      builds.follow(build, added)
      return done(added)
    },
  )

  /** The answer comes when the entries are on disk, or none of them is. */
  function added(addition: Addition, spec: KeptSpec | null): Outcome<readonly RecordedEvent[]> {
    try {
      return add.immediate(addition, spec)
    } catch (error) {
      const problem = writeProblem(error)
      if (problem === null) throw error
      return { ok: false, problem }
    }
  }

  return {
    start: (addition: Addition, spec: KeptSpec) => added(addition, spec),
    append: (addition: Addition) => added(addition, null),
    entries: (build: string): readonly StoredEntry[] => read.all(build),
  }
}
