import { audit } from '../../core/audit/index.ts'
import type { LibraryLine } from '../../core/contract/index.ts'
import { readSpecFile, specFileEnding, specFileOf } from '../../core/drafts/index.ts'
import { families, namesInSpec, type EngineSpec } from '../../core/engine/index.ts'
import { readPerson } from '../../core/builds/index.ts'
import { done, refused, type Outcome, type Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import { sha256 } from '../store/index.ts'
import type { LibraryRow, Publication, Store } from '../store/index.ts'
import type { EngineShelf } from './engine-shelf.ts'
import type { HandlersOf } from './handlers.ts'
import type { People } from './people.ts'
import type { Engine } from './specs.ts'

/** Answers about the library: what is in it, and what goes out of it and in as a file. */
export function libraryRequests(services: {
  readonly store: Store
  readonly shelf: EngineShelf
  readonly people: People
  readonly now: () => Date
}): HandlersOf<'library'> {
  const { store, shelf, people, now } = services

  function textOf(engine: string, revision: number): Outcome<string> {
    const unknown = refused('library-engine-unknown', { engine }, 'engine')
    if (revision === 0) {
      const own = shelf.own.find(({ id }) => id === engine)
      return own?.spec ? done(own.text) : unknown
    }
    const row = store.library.revisions(engine).find((each) => each.revision === revision)
    const text = row && store.specText(row.sha256)
    if (row === undefined || text === null || text === undefined) return unknown
    return sha256(text) === row.sha256 ? done(text) : refused('build-spec-altered', {}, 'engine')
  }

  return {
    'library.list': ({ language }) => {
      const uses = store.library.uses()
      return done([
        ...store.library.latest().map((row) => lineOf(row, uses)),
        ...shelf.own.flatMap((engine) => shippedLine(engine, uses, language) ?? []),
      ])
    },
    'library.revisions': ({ engine }) => {
      const uses = store.library.uses()
      return done(store.library.revisions(engine).map((row) => lineOf(row, uses)))
    },
    'library.read': ({ engine, revision }) => {
      const text = textOf(engine, revision)
      return text.ok ? done({ specText: text.value }) : text
    },
    'library.export': ({ engine, revision }) => {
      const text = textOf(engine, revision)
      if (!text.ok) return text
      const fileName = `${engine}${revision > 0 ? `-${revision}` : ''}${specFileEnding}`
      return done({ fileName, text: specFileOf(text.value, sha256) })
    },
    'library.import': (input) => {
      const person = readPerson(input.person)
      if (!person.ok) return person
      const known = people.present(person.value)
      if (!known.ok) return known
      const file = readSpecFile(input.text, sha256)
      if (!file.ok) return file
      const { text, spec } = file.value
      const hash = sha256(text)
      const revisions = store.library.revisions(spec.id)
      const twin = revisions.find((row) => row.sha256 === hash)
      if (twin !== undefined) return done({ kind: 'known', line: lineOf(twin, store.library.uses()) })
      const own = shelf.own.find(({ id }) => id === spec.id)
      const shipped = own?.text === text ? shippedLine(own, store.library.uses()) : null
      if (shipped !== null) return done({ kind: 'known', line: shipped })
      if (own !== undefined) return refused('draft-id-taken', { engine: spec.id })
      const faults = faultsOf(spec)
      const [first] = faults
      if (first !== undefined) return refused('spec-file-faulty', { faults: faults.length, why: first })
      const publication = publicationOf(spec, text, {
        revision: (revisions[0]?.revision ?? 0) + 1,
        by: person.value,
        at: now().toISOString(),
      })
      const kept = store.library.publish(publication)
      return kept.ok ? done({ kind: 'added', line: lineOf({ ...publication.row, sha256: hash }) }) : kept
    },
  }
}

export function faultsOf(spec: EngineSpec): readonly Problem[] {
  return audit(spec).flatMap(({ weight, problem: found }) => (weight === 'fault' ? [found] : []))
}

/** A spec as a revision of the library. */
export function publicationOf(
  spec: EngineSpec,
  text: string,
  { revision, by, at }: { readonly revision: number; readonly by: string; readonly at: string },
): Publication {
  const { source } = spec
  return {
    row: {
      ...{ engine: spec.id, revision, published_at_utc: at, published_by: by, name: spec.name },
      ...{ family: spec.case.family, cylinders: spec.case.cylinders, revision_name: spec.revision },
      entered_by: source.kind === 'entered' ? source.enteredBy : '',
      checked_by: source.kind === 'entered' ? (source.checkedBy ?? null) : null,
    },
    text,
    closes: null,
  }
}

const noUses: ReadonlyMap<string, number> = new Map()

export function lineOf(row: LibraryRow, uses = noUses): LibraryLine {
  return {
    engine: row.engine,
    name: row.name,
    family: families.find((family) => family === row.family) ?? 'caps',
    cylinders: row.cylinders,
    revision: row.revision,
    revisionName: row.revision_name,
    demo: row.entered_by === '',
    publishedBy: row.published_by,
    publishedAt: row.published_at_utc,
    enteredBy: row.entered_by || null,
    checkedBy: row.checked_by,
    builds: uses.get(row.sha256) ?? 0,
  }
}

/** By engine, whose text is never changed: to read three names off a text takes milliseconds. */
const namesOf = new WeakMap<Engine, { readonly [Each in Language]: string }>()

function namesIn(engine: Engine, otherwise: string): { readonly [Each in Language]: string } {
  const nameIn = (language: Language) => namesInSpec(engine.text, language)?.engine ?? otherwise
  const names = namesOf.get(engine) ?? { en: nameIn('en'), de: nameIn('de'), es: nameIn('es') }
  namesOf.set(engine, names)
  return names
}

/** Null for one that cannot be read. */
function shippedLine(
  engine: Engine,
  uses: ReadonlyMap<string, number>,
  language: Language = 'en',
): LibraryLine | null {
  const { id, spec, text } = engine
  if (spec === null) return null
  const { source } = spec
  const names = namesIn(engine, spec.name)
  const others = [...new Set(Object.values(names))].filter((name) => name !== names[language])
  return {
    engine: id,
    name: names[language],
    ...(others.length > 0 && { alsoCalled: others }),
    family: spec.case.family,
    cylinders: spec.case.cylinders,
    revision: 0,
    revisionName: spec.revision,
    demo: source.kind === 'demo',
    publishedBy: null,
    publishedAt: null,
    enteredBy: source.kind === 'entered' ? source.enteredBy : null,
    checkedBy: source.kind === 'entered' ? (source.checkedBy ?? null) : null,
    builds: uses.get(sha256(text)) ?? 0,
  }
}
