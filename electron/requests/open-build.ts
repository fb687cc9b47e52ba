import { z } from 'zod'
import type { BenchName, BuildState, RecordedEvent, SpecUntil, Standing } from '../../core/builds/index.ts'
import { replay, revisionSpans } from '../../core/builds/index.ts'
import { buildLine } from '../../core/contract/index.ts'
import type { BuildLine, StoredBuild } from '../../core/contract/index.ts'
import { done, problem, refused } from '../../core/problem/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import { namesInAllLanguages, readSpec } from '../../core/engine/index.ts'
import type { EngineSpec, NamesOf } from '../../core/engine/index.ts'
import { underEarlierRules } from './exchange/earlier-rules.ts'
import { lineOf as libraryLineOf } from './library.ts'
import { firstBroken, numberOf, readBegun, readEntry, sha256 } from '../store/index.ts'
import type { BuildRow, Store, StoredEntry } from '../store/index.ts'

/** A build as read from the record, its chain followed to the end. */
export interface OpenedBuild {
  readonly row: BuildRow
  /** The revision of the spec that it goes by. */
  readonly specText: string
  readonly spec: EngineSpec
  /** In each language of its spec. */
  readonly namesOf: NamesOf
  readonly specSha256: string
  /** Those that it went by before, in order. */
  readonly earlier: readonly EarlierSpec[]
  /** Up to the first entry that cannot be relied on or is not known to this version. */
  readonly events: RecordedEvent[]
  readonly state: BuildState
  /** Why nothing may be added; null when it is open for work. */
  readonly readOnly: Problem | null
}

/** A spec that a build went by, up to and including an entry. */
export interface EarlierSpec extends SpecUntil {
  readonly specText: string
}

export function openBuild(store: Store, build: string): Outcome<OpenedBuild> {
  const row = store.build(build)
  const entries = store.entries(build)
  if (!row) return refused(entries.length > 0 ? 'build-unlisted' : 'build-unknown', {}, 'build')
  const { events, readOnly } = readable(build, entries)
  // What the entries name rules: they are under the chain, and the row is not.
  const named = specNamedIn(entries[0]) ?? row.spec_sha256
  const spans = events.length === 0 ? [{ specSha256: named, until: Infinity }] : revisionSpans(events)
  const specs: (EarlierSpec & { readonly specSha256: string })[] = []
  for (const { specSha256, until } of spans) {
    const specText = store.specText(specSha256)
    const read = specText === null ? null : readSpec(specText)
    if (specText === null || !read?.ok) return refused('build-spec-lost', {}, 'build')
    specs.push({ specSha256, specText, spec: read.spec, until })
  }
  const last = specs.pop()
  if (last === undefined) return refused('build-spec-lost', {}, 'build')
  const fault = [...specs, last].some(({ specText, specSha256 }) => sha256(specText) !== specSha256)
  return done({
    row,
    specText: last.specText,
    spec: last.spec,
    namesOf: namesInAllLanguages(last.specText),
    specSha256: last.specSha256,
    earlier: specs,
    events,
    state: startedAt(replay(events), readBegun(row.begun_json)?.bench ?? null),
    readOnly: readOnly ?? specFault(row, named, fault) ?? earlierRules(store, build),
  })
}

/** A build as the window is given it. */
export function storedBuild(store: Store, opened: OpenedBuild): StoredBuild {
  const { row, specText, events, earlier, readOnly } = opened
  return {
    line: lineOf(row),
    specText,
    events,
    readOnly,
    ...(earlier.length > 0 && {
      earlier: earlier.map(({ specText: text, until }) => ({ specText: text, until })),
    }),
    ...(readOnly === null && newerThan(store, opened)),
  }
}

/** The latest revision of the library, where a build that goes on goes by an earlier one of it. */
export function newerThan(
  store: Store,
  { spec, specSha256, state }: Pick<OpenedBuild, 'spec' | 'specSha256' | 'state'>,
): Pick<StoredBuild, 'newer'> {
  if (state.finished) return {}
  const revisions = store.library.revisions(spec.id)
  const own = revisions.find((row) => row.sha256 === specSha256)
  const [latest] = revisions
  const isNewer = own !== undefined && latest !== undefined && latest.revision > own.revision
  return isNewer ? { newer: libraryLineOf(latest) } : {}
}

/** The state of a build that no entry says the bench of: it is the one that began it. */
function startedAt(state: BuildState, bench: BenchName | null): BuildState {
  return state.bench === null ? { ...state, bench } : state
}

function earlierRules(store: Store, build: string): Problem | null {
  const entry = underEarlierRules(store, build)
  return entry === null ? null : problem('build-of-earlier-rules', { entry })
}

function specNamedIn(first: StoredEntry | undefined): string | null {
  const event = first === undefined ? null : readEntry(first)?.event
  return event?.type === 'build-started' ? event.specSha256 : null
}

function specFault(row: BuildRow, named: string, isAltered: boolean): Problem | null {
  if (isAltered) return problem('build-spec-altered', {})
  return row.spec_sha256 === named ? null : problem('build-spec-swapped', {})
}

function readable(build: string, entries: readonly StoredEntry[]) {
  const broken = firstBroken(build, entries)
  const events: RecordedEvent[] = []
  for (const entry of broken === null ? entries : entries.slice(0, broken - 1)) {
    const read = readEntry(entry)
    if (read === null) return { events, readOnly: problem('build-entry-unreadable', { entry: entry.seq }) }
    const { event, ...rest } = read
    if (event === null) return { events, readOnly: problem('build-newer', { entry: entry.seq }) }
    events.push({ ...rest, event })
  }
  return { events, readOnly: broken === null ? null : problem('build-chain-broken', { entry: broken }) }
}

/** Whether what the build rests on is sound, so that it may be given out: one of a newer program or of earlier rules may. */
export function mayLeave(readOnly: Problem | null): boolean {
  return readOnly === null || readOnly.code === 'build-newer' || readOnly.code === 'build-of-earlier-rules'
}

/** A build as a line of the list; only lists say where it stands. What no line can have gives way to something that one can, and `fault` says so. */
export function lineOf(row: BuildRow, standing: Standing | null = null): BuildLine {
  const begun = readBegun(row.begun_json)
  const line = {
    id: row.id,
    number: numberOf(row),
    ...(begun !== null && { begunAt: begun.bench.name }),
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
    standing,
    fault: null,
  }
  const read = buildLine.safeParse(line)
  const isId = z.uuid().safeParse(line.id).success
  if (read.success && isId) return read.data
  const wrong = new Set((read.error?.issues ?? []).map(({ path }) => String(path[0])))
  if (!isId) wrong.add('id')
  const fault = problem('build-row-unreadable', { columns: [...wrong] })
  const time = (key: 'startedAt' | 'lastAt') => (wrong.has(key) ? new Date(0).toISOString() : line[key])
  const { id, name, serial, engine } = line
  const texts = { id: String(id), name: String(name), serial: String(serial), engine: String(engine) }
  return { ...line, ...texts, startedAt: time('startedAt'), lastAt: time('lastAt'), fault }
}
