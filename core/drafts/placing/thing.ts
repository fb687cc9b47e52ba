import type { Point } from '../../plane/index.ts'
import type { Phrase } from '../../problem/index.ts'
import { inPlace, placeTexts } from './position.ts'
import type { SpecDocument } from '../../engine/index.ts'

/** What sits in a joint face and can be placed there. */
export const thingKinds = ['fastener', 'dowel', 'oil-passage', 'face-part'] as const
export type ThingKind = (typeof thingKinds)[number]

/** One of them, as a drawing names it: `fastener/C4`. */
export interface Thing {
  readonly kind: ThingKind
  readonly id: string
}

/** With its place in the engine's own frame, in whole nanometres: x from the nose, y across. */
export interface PlacedThing extends Thing {
  readonly face: string
  readonly at: Point
}

interface Listed {
  readonly id: string
  readonly face: string
  readonly at: readonly [string, string]
}

export function aboutOf({ kind, id }: Thing): string {
  return `${kind}/${id}`
}

/** The thing that a drawing names; null for what cannot be placed. */
export function thingNamed(about: string): Thing | null {
  const [kind, id] = about.split('/')
  const known = thingKinds.find((each) => each === kind)
  return known === undefined || id === undefined ? null : { kind: known, id }
}

export function listOf(document: SpecDocument, kind: ThingKind): readonly Listed[] {
  switch (kind) {
    case 'fastener':
      return document.fasteners
    case 'dowel':
      return document.case.dowels ?? []
    case 'oil-passage':
      return document.case.oilPassages ?? []
    case 'face-part':
      return document.case.faceParts ?? []
    default:
      return kind satisfies never
  }
}

/** A document with another list of things of a kind. The entries must be of that kind. */
export function withList(document: SpecDocument, kind: ThingKind, list: readonly Listed[]): SpecDocument {
  const engine = document.case
  switch (kind) {
    case 'fastener':
      return { ...document, fasteners: list as SpecDocument['fasteners'] }
    case 'dowel':
      return { ...document, case: { ...engine, dowels: list as NonNullable<typeof engine.dowels> } }
    case 'oil-passage':
      return { ...document, case: { ...engine, oilPassages: list as NonNullable<typeof engine.oilPassages> } }
    case 'face-part':
      return { ...document, case: { ...engine, faceParts: list as NonNullable<typeof engine.faceParts> } }
    default:
      return kind satisfies never
  }
}

/** Everything that sits in a face, in the order of the document. */
export function thingsOn(document: SpecDocument, face: string): readonly PlacedThing[] {
  return thingKinds.flatMap((kind) =>
    listOf(document, kind).flatMap((each) =>
      each.face === face ? [{ kind, id: each.id, face, at: inPlace(each.at) }] : [],
    ),
  )
}

/** The things with their places, in the order they are named in; one that is not there is left out. */
export function placedThings(document: SpecDocument, things: readonly Thing[]): readonly PlacedThing[] {
  return things.flatMap(({ kind, id }) => {
    const found = listOf(document, kind).find((each) => each.id === id)
    return found === undefined ? [] : [{ kind, id, face: found.face, at: inPlace(found.at) }]
  })
}

/** A document with things at other places, by what a drawing calls them; a place keeps its unit, and its text where it is the same. */
export function withPlaces(document: SpecDocument, places: ReadonlyMap<string, Point>): SpecDocument {
  return thingKinds.reduce((changed, kind) => {
    const list = listOf(changed, kind)
    if (!list.some(({ id }) => places.has(aboutOf({ kind, id })))) return changed
    const next = list.map((each) => {
      const at = places.get(aboutOf({ kind, id: each.id }))
      return at === undefined ? each : { ...each, at: placeTexts(at, each.at) }
    })
    return withList(changed, kind, next)
  }, document)
}

/** What a sentence calls it. */
export function called(document: SpecDocument, { kind, id }: Thing): Phrase {
  switch (kind) {
    case 'fastener': {
      const number = document.fasteners.find((each) => each.id === id)?.number ?? id
      return { code: 'fastenerNumbered', facts: { number } }
    }
    case 'dowel':
      return { code: 'dowelCalled', facts: { dowel: id } }
    case 'oil-passage':
      return { code: 'passageCalled', facts: { name: id } }
    case 'face-part':
      return { code: 'facePartCalled', facts: { name: id } }
    default:
      return kind satisfies never
  }
}
