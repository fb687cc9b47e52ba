import { aboutOf, isBearing, subjects, thingsOn, type PlacedThing } from '../../../core/drafts/index.ts'
import type { EngineSpec, SpecDocument } from '../../../core/engine/index.ts'
import type { Point } from '../../../core/plane/index.ts'
import type { Words } from '../../../core/words/index.ts'
import { dowelText, handleText } from '../drawing/handles.ts'

/** What already lies on a face, with its place in nanometres: what a point of a picture may be. */
export function knownPlaces(
  words: Words,
  spec: EngineSpec,
  document: SpecDocument,
  face: string,
): readonly { readonly about: string; readonly text: string; readonly at: Point }[] {
  const kinds = [...subjects.bearings, ...subjects.parts, ...subjects.outline]
  return thingsOn(document, face, kinds).flatMap((thing) => {
    const text = textOf(words, spec, thing)
    return text === null ? [] : [{ about: aboutOf(thing), text, at: thing.at }]
  })
}

function textOf(words: Words, spec: EngineSpec, thing: PlacedThing): string | null {
  const { kind, id } = thing
  if (isBearing(kind) || kind === 'corner') return handleText(words, spec, thing)
  if (kind === 'dowel') return dowelText(words, spec, id)
  const fastener = kind === 'fastener' ? spec.fasteners.find((each) => each.id === id) : undefined
  return fastener ? words.drawing.list.fastener(fastener) : null
}
