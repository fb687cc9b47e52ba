import type { RecordedEvent } from '../../core/build/index.ts'
import type { Database } from './sqlite.ts'

/** One line of the list of builds. */
export interface BuildRow {
  readonly id: string
  readonly year: number
  /** 1, 2, 3 … within the year, on this bench. */
  readonly ordinal: number
  readonly name: string
  readonly serial: string
  readonly engine: string
  readonly demo: 0 | 1
  readonly spec_sha256: string
  readonly started_at_utc: string
  readonly last_at_utc: string
  readonly finished: 0 | 1
  readonly entries: number
  readonly head_sha256: string
}

const line = 'SELECT build.*, spec.engine, spec.demo FROM build JOIN spec ON spec.sha256 = build.spec_sha256'

/** The list of builds: read off the events, and brought up to date in the transaction that adds them. */
export function buildsOn(db: Database) {
  const all = db.prepare<[], BuildRow>(`${line} ORDER BY id DESC`)
  const one = db.prepare<[string], BuildRow>(`${line} WHERE id = ?`)
  const insert = db.prepare(`
    INSERT INTO build VALUES (
      @id, @year, (SELECT coalesce(max(ordinal), 0) + 1 FROM build WHERE year = @year), @name, @serial, @sha256,
      @at, @at, 0, 1, @head
    )`)
  const update = db.prepare(`
    UPDATE build SET last_at_utc = @at, entries = @seq, head_sha256 = @head, finished = @finished OR finished
    WHERE id = @build`)

  return {
    all: (): readonly BuildRow[] => all.all(),
    one: (id: string): BuildRow | null => one.get(id) ?? null,
    /** Takes in entries just added to `build`, in order. */
    follow(build: string, added: readonly RecordedEvent[]): void {
      const last = added.at(-1)
      if (last === undefined) return
      for (const { at, event, hash } of added)
        if (event.type === 'build-started')
          insert.run({
            id: build,
            year: Number(at.slice(0, 4)),
            name: event.name,
            serial: event.serial,
            sha256: event.specSha256,
            at,
            head: hash,
          })
      const finished = added.some(({ event }) => event.type === 'build-finished')
      update.run({ build, at: last.at, seq: last.seq, head: last.hash, finished: finished ? 1 : 0 })
    },
  }
}

export type Builds = ReturnType<typeof buildsOn>
