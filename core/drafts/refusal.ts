import { keysOfPath, nameInSpec, placeInSpec, type SpecDocument } from '../engine/index.ts'
import { problem, type Facts, type Phrase, type Problem } from '../problem/index.ts'
import { valueIn, type ValuePath } from './forms/index.ts'

type NamedPart = Facts<'spec-reference-dangling'>['what']

/**
 * What reading a document refused, for who edits it and knows no keys and ids: `draft-value-unfit` for a value that cannot be what it
 * is to be, `draft-too-large`, `draft-part-needed` for what was taken out of the document `before` and is still named.
 */
export function asEdited(before: SpecDocument, after: SpecDocument, refusal: Problem): Problem {
  const path = keysOfPath(refusal.path)
  switch (refusal.code) {
    case 'spec-part-missing':
    case 'spec-part-wrong': {
      const should = inField(refusal.facts.should)
      return problem('draft-value-unfit', { place: placeInSpec(after, path), should }, refusal.path)
    }
    case 'spec-too-large':
      return problem('draft-too-large', refusal.facts)
    case 'spec-reference-dangling': {
      const { what, id } = refusal.facts
      const place = placeInSpec(after, toEntry(after, path))
      return problem('draft-part-needed', { what, name: nameOf(before, what, id), place }, refusal.path)
    }
    case 'spec-id-twice': {
      const { of, ...facts } = refusal.facts
      const named = of && { ...of, id: nameOf(before, of.what, of.id).facts.en }
      return problem('spec-id-twice', { ...facts, of: named }, refusal.path)
    }
    default:
      return refusal
  }
}

/** What to type, where a file would have it with quotes or without. */
function inField(should: Facts<'spec-part-wrong'>['should']): Facts<'spec-part-wrong'>['should'] {
  if (should.code !== 'write-kind') return should
  const { kind } = should.facts
  if (kind === 'number') return { code: 'type-number', facts: {} }
  return kind === 'int' ? { code: 'type-whole-number', facts: {} } : should
}

/** The way to the innermost entry on a path that is more than a name: a person finds the rest in its form. */
function toEntry(document: SpecDocument, path: ValuePath): ValuePath {
  const depth = path.findLastIndex((_, at) => {
    const value = valueIn(document, path.slice(0, at + 1))
    return typeof value === 'object' && value !== null && !Array.isArray(value)
  })
  return path.slice(0, depth + 1)
}

/** What is called by its id on the screen too, or by what is typed as its id, has no list here. */
function nameOf(
  document: SpecDocument,
  what: NamedPart,
  id: string,
): Extract<Phrase, { readonly code: 'nameInSpec' }> {
  const lists: Partial<Record<NamedPart, readonly { readonly id: string; readonly name?: unknown }[]>> = {
    bead: document.beads ?? [],
    face: document.case.faces,
    'face-part': document.case.faceParts ?? [],
    'fastener-group': document.fastenerGroups,
    fastener: document.fasteners.map((each) => ({ id: each.id, name: each.number })),
    fit: document.fits,
    order: document.procedures.flatMap(({ orders }) => orders),
    part: document.parts ?? [],
    procedure: document.procedures,
    'ring-set': document.ringSets ?? [],
    step: document.steps,
  }
  return nameInSpec(lists[what]?.find((each) => each.id === id)?.name, id)
}
