import { audit } from '../../core/audit/index.ts'
import { readPerson } from '../../core/builds/index.ts'
import type { DraftLine, DraftOrigin, OpenedDraft } from '../../core/contract/index.ts'
import {
  bareCase,
  beginDraft,
  copyOf,
  decideDraft,
  documentIn,
  documentOf,
  documentText,
  draftEvent,
  evolveDraft,
  idFrom,
  mayFollow,
  revisionOf,
  typistsIn,
  withTypists,
  type AllWords,
  type DraftBeginning,
  type Draft,
  type DraftEntry,
  type DraftEvent,
} from '../../core/drafts/index.ts'
import { readSpec, type EngineSpec, type SpecDocument } from '../../core/engine/index.ts'
import { done, refused, type Outcome } from '../../core/problem/index.ts'
import { languages, loadWords } from '../../core/words/index.ts'
import type { DraftRow, Store } from '../store/index.ts'
import type { EngineShelf } from './engine-shelf.ts'
import type { HandlersOf } from './handlers.ts'
import { faultsOf, lineOf as libraryLineOf, publicationOf } from './library.ts'
import type { People } from './people.ts'

interface OpenDraft {
  readonly row: DraftRow
  readonly entries: readonly DraftEntry[]
  readonly draft: Draft
  /** Whether every entry could be read, and followed the one before it. */
  readonly isWhole: boolean
}

/** Answers about specs that people write, and the only way by which anything is added to a draft. */
export function draftRequests(services: {
  readonly store: Store
  readonly shelf: EngineShelf
  readonly people: People
  readonly now: () => Date
  readonly newId: () => string
}): HandlersOf<'drafts'> {
  const { store, shelf, people, now, newId } = services
  /** The drafts that were looked at since the program was started, as far as they had come. */
  const opened = new Map<string, OpenDraft>()

  function open(id: string): Outcome<OpenDraft> {
    const known = opened.get(id)
    if (known !== undefined) return done(known)
    const row = store.drafts.one(id)
    if (row === null) return refused('draft-unknown', {}, 'draft')
    const read = openRow(store, row)
    opened.set(id, read)
    return done(read)
  }

  /** The same for who works on it: nothing is added to entries that are not understood. */
  function openWhole(id: string): Outcome<OpenDraft> {
    const found = open(id)
    return found.ok && !found.value.isWhole ? refused('draft-of-another-version', {}, 'draft') : found
  }

  function atBench(typed: string): Outcome<string> {
    const person = readPerson(typed)
    if (!person.ok) return person
    const known = people.present(person.value)
    return known.ok ? person : known
  }

  /** What a draft begins with, and which revision it becomes. */
  async function begin(
    origin: DraftOrigin,
    beginning: Omit<DraftBeginning, 'id'>,
  ): Promise<Outcome<{ readonly base: SpecDocument; readonly revision: number }>> {
    if (origin.kind === 'revision') {
      const [latest] = store.library.revisions(origin.engine)
      const text = latest && store.specText(latest.sha256)
      if (latest === undefined || !text) return refused('library-engine-unknown', origin, 'engine')
      const revision = latest.revision + 1
      return done({ base: revisionOf(documentIn(text), { ...beginning, revision }), revision })
    }
    if (beginning.name === '') return refused('engine-name-missing', {}, 'name')
    const id = idFrom(beginning.name, takenIds())
    if (origin.kind === 'bare') {
      const base = bareCase(await allWords(), { ...beginning, id }, origin.parameters)
      return base.ok ? done({ base: base.value, revision: 1 }) : base
    }
    const text = textToCopy(origin.engine, origin.revision)
    if (text === null) return refused('library-engine-unknown', { engine: origin.engine }, 'engine')
    return done({ base: copyOf(documentIn(text), { ...beginning, id }), revision: 1 })
  }

  function textToCopy(engine: string, revision: number): string | null {
    if (revision === 0) return shelf.own.find(({ id, spec }) => id === engine && spec !== null)?.text ?? null
    const row = store.library.revisions(engine).find((each) => each.revision === revision)
    return row === undefined ? null : store.specText(row.sha256)
  }

  function takenIds(): ReadonlySet<string> {
    return new Set([
      ...shelf.own.map(({ id }) => id),
      ...store.library.latest().map(({ engine }) => engine),
      ...store.drafts.all().map(({ engine }) => engine),
    ])
  }

  return {
    'drafts.list': () => {
      const lines = store.drafts.all().flatMap(({ id }) => {
        const found = open(id)
        return found.ok && found.value.draft.state !== 'published' ? [lineOf(found.value)] : []
      })
      return done(lines)
    },

    'drafts.begin': async (input) => {
      const person = atBench(input.person)
      if (!person.ok) return person
      const from = input.from.trim()
      if (from === '') return refused('engine-manual-missing', {}, 'from')
      const at = now().toISOString()
      const beginning = { name: input.name.trim(), person: person.value, from, on: at.slice(0, 10) }
      const begun = await begin(input.origin, beginning)
      if (!begun.ok) return begun
      const base = documentText(begun.value.base)
      const read = readSpec(base)
      const [first] = read.ok ? [] : read.problems
      if (first !== undefined) return { ok: false, problem: first }
      const id = newId()
      const row = { id, engine: begun.value.base.id, revision: begun.value.revision, base }
      const kept = store.drafts.begin({ ...row, begun_by: person.value, begun_at_utc: at })
      if (!kept.ok) return kept
      const found = open(id)
      return found.ok ? done(outward(found.value)) : found
    },

    'drafts.open': ({ draft }) => {
      const found = openWhole(draft)
      return found.ok ? done(outward(found.value)) : found
    },

    'drafts.act': ({ draft: id, after, person: typed, act }) => {
      const person = atBench(typed)
      if (!person.ok) return person
      const found = openWhole(id)
      if (!found.ok) return found
      const { draft } = found.value
      if (after !== draft.seq) return refused('draft-moved-on', { last: draft.seq }, 'after')
      const event = decideDraft(draft, act, person.value)
      if (!event.ok) return event
      return append(found.value, person.value, event.value)
    },

    'drafts.publish': ({ draft: id, after, person: typed }) => {
      const person = atBench(typed)
      if (!person.ok) return person
      const found = openWhole(id)
      if (!found.ok) return found
      const { draft, row } = found.value
      if (after !== draft.seq) return refused('draft-moved-on', { last: draft.seq }, 'after')
      if (draft.state !== 'open') return refused('draft-closed', { state: draft.state })
      const text = documentText(withTypists(documentOf(draft), typistsIn(draft)))
      const read = readSpec(text)
      const [first] = read.ok ? [] : read.problems
      if (!read.ok)
        return first === undefined ? refused('draft-edit-unfit', {}) : { ok: false, problem: first }
      const { spec } = read
      const faults = faultsOf(spec)
      if (faults.length > 0) return refused('draft-faulty', { faults: faults.length })
      const isTaken = row.engine !== spec.id && takenIds().has(spec.id)
      if (isTaken || shelf.own.some((engine) => engine.id === spec.id))
        return refused('draft-id-taken', { engine: spec.id }, 'id')
      const at = now().toISOString()
      const publication = publicationOf(spec, text, { revision: row.revision, by: person.value, at })
      const event = { type: 'published', engine: spec.id, revision: row.revision } as const
      const entry = entryOf(draft, person.value, at, event)
      const kept = store.library.publish({ ...publication, closes: { draft: id, entry: keptEntry(entry) } })
      if (!kept.ok) {
        opened.delete(id)
        return kept
      }
      opened.set(id, advanced(found.value, entry))
      store.pictures.removeAll(id)
      const [published] = store.library.revisions(spec.id)
      return published === undefined
        ? refused('library-engine-unknown', { engine: spec.id })
        : done(libraryLineOf(published))
    },
  }

  function append(found: OpenDraft, person: string, event: DraftEvent): Outcome<DraftEntry> {
    const entry = entryOf(found.draft, person, now().toISOString(), event)
    const kept = store.drafts.append(found.row.id, keptEntry(entry))
    if (!kept.ok) {
      opened.delete(found.row.id)
      return kept
    }
    opened.set(found.row.id, advanced(found, entry))
    return done(entry)
  }
}

function entryOf({ seq }: Draft, person: string, at: string, event: DraftEvent): DraftEntry {
  return { seq: seq + 1, at, person, event }
}

function keptEntry({ seq, at, person, event }: DraftEntry) {
  return { seq, at_utc: at, person, event_json: JSON.stringify(event) }
}

function advanced(found: OpenDraft, entry: DraftEntry): OpenDraft {
  return { ...found, entries: [...found.entries, entry], draft: evolveDraft(found.draft, entry) }
}

/** A draft as it lies in the record, up to the first entry that this version cannot read, or that does not follow. */
function openRow(store: Store, row: DraftRow): OpenDraft {
  const kept = store.drafts.entries(row.id)
  const entries: DraftEntry[] = []
  let draft = beginDraft(documentIn(row.base))
  for (const { seq, at_utc, person, event_json } of kept) {
    const event = draftEvent.safeParse(jsonIn(event_json))
    const entry = event.success ? { seq, at: at_utc, person, event: event.data } : null
    if (entry === null || !mayFollow(draft, entry)) break
    entries.push(entry)
    draft = evolveDraft(draft, entry)
  }
  return { row, entries, draft, isWhole: entries.length === kept.length }
}

function outward(found: OpenDraft): OpenedDraft {
  return { line: lineOf(found), base: found.row.base, entries: [...found.entries] }
}

function lineOf({ row, entries, draft }: OpenDraft): DraftLine {
  const document = documentOf(draft)
  const { spec, faults, doubts } = auditedOnce(document)
  return {
    id: row.id,
    engine: spec?.id ?? row.engine,
    revision: row.revision,
    name: spec?.name ?? row.engine,
    family: document.case.family,
    begunBy: row.begun_by,
    begunAt: row.begun_at_utc,
    lastAt: entries.at(-1)?.at ?? row.begun_at_utc,
    state: draft.state,
    edits: draft.position,
    faults,
    doubts,
    isChecked: document.source.kind === 'entered' && document.source.checkedBy !== undefined,
    entries: draft.seq,
  }
}

interface AuditedDraft {
  readonly spec: EngineSpec | null
  readonly faults: number
  readonly doubts: number
}

/** By document, which is never changed in place: a list of drafts audits each once. */
const audits = new WeakMap<SpecDocument, AuditedDraft>()

function auditedOnce(document: SpecDocument): AuditedDraft {
  const known = audits.get(document)
  if (known !== undefined) return known
  const read = readSpec(documentText(document))
  const findings = read.ok ? audit(read.spec) : []
  const of = (weight: 'fault' | 'doubt') =>
    findings.filter((each) => each.weight === weight && each.accepted === undefined).length
  const audited = read.ok
    ? { spec: read.spec, faults: of('fault'), doubts: of('doubt') }
    : { spec: null, faults: read.problems.length, doubts: 0 }
  audits.set(document, audited)
  return audited
}

async function allWords(): Promise<AllWords> {
  const tables = await Promise.all(languages.map(async (each) => [each, await loadWords(each)] as const))
  return Object.fromEntries(tables) as AllWords
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return null
  }
}
