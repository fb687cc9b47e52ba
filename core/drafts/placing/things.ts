import type { Point } from '../../plane/index.ts'
import type { Phrase } from '../../problem/index.ts'
import { anyText, dowelNumber, type SpecDocument } from '../../engine/index.ts'
import { bearingAt, bearingKindOn, bearingsOf, placedBearings, withBearings } from './bearings.ts'
import { listOf, withList } from './listed.ts'
import { faceOfPoint, pathOfPoint, pointsOn, withPointsAt } from './paths.ts'
import { inPlace, placeTexts } from './position.ts'
import {
  isBearing,
  isListed,
  subjects,
  thingKinds,
  type PlacedThing,
  type Thing,
  type ThingKind,
} from './thing.ts'

/** Everything that sits in a face, in the order of the document; of some kinds alone where they are named. */
export function thingsOn(
  document: SpecDocument,
  face: string,
  kinds: readonly ThingKind[] = subjects.parts,
): readonly PlacedThing[] {
  return kinds.flatMap((kind): readonly PlacedThing[] => {
    if (isListed(kind))
      return listOf(document, kind).flatMap((each) =>
        each.face === face ? [{ kind, id: each.id, face, at: inPlace(each.at) }] : [],
      )
    if (isBearing(kind))
      return bearingKindOn(document, face) === kind ? placedBearings(document, kind, face) : []
    return pointsOn(document, kind, face)
  })
}

/** The things with their places, in the order they are named in; one that is not there is left out. */
export function placedThings(document: SpecDocument, things: readonly Thing[]): readonly PlacedThing[] {
  return things.flatMap((thing) => {
    const { kind, id } = thing
    const found = isBearing(kind)
      ? placedBearings(document, kind).find((each) => each.id === id)
      : thingsOn(document, faceOf(document, thing) ?? '', [kind]).find((each) => each.id === id)
    return found === undefined ? [] : [found]
  })
}

function faceOf(document: SpecDocument, { kind, id }: Thing): string | undefined {
  if (isListed(kind)) return listOf(document, kind).find((each) => each.id === id)?.face
  return isBearing(kind) ? undefined : faceOfPoint(document, kind, id)
}

/** A document with things at other places, by what a drawing calls them; a place keeps its unit, and its text where it is the same. */
export function withPlaces(document: SpecDocument, places: ReadonlyMap<string, Point>): SpecDocument {
  return thingKinds.reduce((changed, kind) => {
    const to = new Map(
      [...places].flatMap(([about, at]) =>
        about.startsWith(`${kind}/`) ? [[about.slice(kind.length + 1), at] as const] : [],
      ),
    )
    if (to.size === 0) return changed
    if (isListed(kind)) {
      const list = listOf(changed, kind).map((each) => {
        const at = to.get(each.id)
        return at === undefined ? each : { ...each, at: placeTexts(at, each.at) }
      })
      return withList(changed, kind, list)
    }
    if (!isBearing(kind)) return withPointsAt(changed, kind, to)
    const list = bearingsOf(changed, kind).map((each) => {
      const at = to.get(each.id)
      return at === undefined ? each : bearingAt(each, at)
    })
    return withBearings(changed, kind, list)
  }, document)
}

/** Where the entry of a thing stands in the document; null where it is none any more. */
export function pathOfThing(
  document: SpecDocument,
  { kind, id }: Thing,
): readonly (string | number)[] | null {
  if (!isListed(kind) && !isBearing(kind)) return pathOfPoint(document, kind, id)
  const list = isListed(kind) ? listOf(document, kind) : bearingsOf(document, kind)
  const index = list.findIndex((each) => each.id === id)
  return index < 0 ? null : [...lists[kind], index]
}

const lists = {
  fastener: ['fasteners'],
  dowel: ['case', 'dowels'],
  'oil-passage': ['case', 'oilPassages'],
  'face-part': ['case', 'faceParts'],
  saddle: ['case', 'saddles'],
  rod: ['case', 'rods'],
  balance: ['case', 'balanceBearings'],
} as const

/** The thing that a place of the document, as findings have it, is about, with its face; null where it is about none that is drawn. */
export function thingAt(document: SpecDocument, path: string): PlacedThing | null {
  for (const [kind, keys] of Object.entries(lists)) {
    const start = `${keys.join('.')}[`
    if (!path.startsWith(start)) continue
    const index = Number.parseInt(path.slice(start.length), 10)
    const list = isBearing(kind as ThingKind)
      ? bearingsOf(document, kind as 'saddle')
      : listOf(document, kind as 'fastener')
    const entry = list[index]
    return entry === undefined
      ? null
      : (placedThings(document, [{ kind: kind as ThingKind, id: entry.id }])[0] ?? null)
  }
  return null
}

/** What a sentence calls it. */
export function called(document: SpecDocument, thing: Thing): Phrase {
  const { kind, id } = thing
  switch (kind) {
    case 'fastener': {
      const number = document.fasteners.find((each) => each.id === id)?.number ?? id
      return { code: 'fastenerNumbered', facts: { number } }
    }
    case 'dowel': {
      const { dowels = [] } = document.case
      const dowel = dowels.find((each) => each.id === id)
      return { code: 'dowelCalled', facts: { dowel: dowel ? dowelNumber(dowels, dowel) : id } }
    }
    case 'oil-passage': {
      const part = document.case.oilPassages?.find((each) => each.id === id)
      return { code: 'passageCalled', facts: { name: anyText(part?.name) ?? id } }
    }
    case 'face-part': {
      const part = document.case.faceParts?.find((each) => each.id === id)
      return { code: 'facePartCalled', facts: { name: anyText(part?.name) ?? id } }
    }
    case 'saddle':
    case 'rod':
    case 'balance':
      return { code: 'facePartCalled', facts: { name: id } }
    case 'corner':
    case 'bead-point':
    case 'keep-out': {
      const [of = id] = id.split('~')
      const list = kind === 'corner' ? document.case.faces : (document.beads ?? [])
      return {
        code: 'facePartCalled',
        facts: { name: anyText(list.find((each) => each.id === of)?.name) ?? of },
      }
    }
    default:
      return kind satisfies never
  }
}
