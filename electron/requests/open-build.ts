import { readEvent, replay, type BuildState, type RecordedEvent } from '../../core/builds/index.ts'
import type { BuildLine, ReadEntry } from '../../core/contract/index.ts'
import { done, problem, refused, type Outcome, type Problem } from '../../core/problem/index.ts'
import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import {
  firstBroken,
  numberWord,
  type BuildRow,
  type EntryBody,
  type Store,
  type StoredEntry,
} from '../store/index.ts'

/** A build as read from the record, its chain followed to the end. */
export interface OpenedBuild {
  readonly row: BuildRow
  readonly specText: string
  readonly spec: EngineSpec
  /** Up to the first entry that cannot be relied on or is not known to this version. */
  readonly events: RecordedEvent[]
  readonly state: BuildState
  /** Why nothing may be added; null when it is open for work. */
  readonly readOnly: Problem | null
}

export function openBuild(store: Store, build: string): Outcome<OpenedBuild> {
  const row = store.build(build)
  if (!row) return refused('build-unknown', {}, 'build')
  const specText = store.specText(row.spec_sha256)
  const read = specText === null ? null : readSpec(specText)
  if (specText === null || !read?.ok) return refused('build-spec-lost', {}, 'build')
  const { events, readOnly } = readable(build, store.entries(build))
  return done({ row, specText, spec: read.spec, events, state: replay(events), readOnly })
}

function readable(build: string, entries: readonly StoredEntry[]) {
  const broken = firstBroken(build, entries)
  const events: RecordedEvent[] = []
  for (const entry of broken === null ? entries : entries.slice(0, broken - 1)) {
    const { event, ...rest } = readEntry(entry)
    if (event === null) return { events, readOnly: problem('build-newer', { entry: entry.seq }) }
    events.push({ ...rest, event })
  }
  return { events, readOnly: broken === null ? null : problem('build-chain-broken', { entry: broken }) }
}

/** What an entry says; its event is null where only a newer program knows it. */
export function readEntry({ seq, body, sha256 }: StoredEntry): ReadEntry {
  const { at, person, event } = JSON.parse(body) as EntryBody
  const read = readEvent(event)
  return { seq, at, person, event: read.kind === 'known' ? read.event : null, hash: sha256 }
}

/** A build as a line of the list. */
export function lineOf(row: BuildRow): BuildLine {
  return {
    id: row.id,
    number: `${row.year}-${numberWord(row.ordinal)}`,
    name: row.name,
    serial: row.serial,
    engine: row.engine,
    demo: row.demo === 1,
    startedAt: row.started_at_utc,
    lastAt: row.last_at_utc,
    finished: row.finished === 1,
    voided: row.voided === 1,
    flagged: row.flagged === 1,
    entries: row.entries,
  }
}
