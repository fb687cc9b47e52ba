import type { Point } from '../../plane/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import type { FacePart, SpecDocument } from '../../engine/index.ts'
import { bearingsOf, freeCylinder, withBearing } from './bearings.ts'
import { idsOfBearings, type FastenerPlace } from './copies.ts'
import { liesOn, offFace } from './face.ts'
import { listOf, withList } from './listed.ts'
import { nextId, nextNumber } from './naming.ts'
import { pointId, withPoint } from './paths.ts'
import { lengthTextOf, unitOf } from './position.ts'
import type { BearingKind, ListedKind, Thing } from './thing.ts'

type Size = readonly [string, string]
type Extent = Size | undefined
/** Lengths as they are typed; what is left out is that of the last one of its kind. */
interface Sizes {
  readonly diameter?: string | undefined
  readonly width?: string | undefined
  readonly shaft?: string | undefined
  readonly size?: Extent
}

/** What is put on a face. A size that is not said is that of the last one of its kind there. */
export type NewThing =
  | { readonly kind: 'fastener'; readonly group: string; readonly where: FastenerPlace }
  | { readonly kind: 'dowel'; readonly diameter?: string | undefined }
  | { readonly kind: 'oil-passage'; readonly name: FastenerPlace; readonly size?: Extent }
  | ({
      readonly kind: 'face-part'
      readonly of: FacePart['kind']
      readonly name: FastenerPlace
      /** Where a lip points, or oil flows. */
      readonly way?: 'inwards' | 'outwards' | undefined
    } & Sizes)
  | ({ readonly kind: BearingKind } & Pick<Sizes, 'width' | 'diameter'>)
  | { readonly kind: 'corner' }
  | { readonly kind: 'bead-point'; readonly bead: string }
  | { readonly kind: 'keep-out'; readonly bead: string; readonly name: FastenerPlace; readonly size?: Extent }

/** A document with something new in it, and which it is. */
export interface DocumentWithThing {
  readonly document: SpecDocument
  readonly thing: Thing
}

/** The sizes of the last one of a kind: those of the next one, unless they are said. Holes are of a face, bearings of the engine. */
export function lastSizes(
  document: SpecDocument,
  face: string,
  kind: NewThing['kind'],
  of: FacePart['kind'] = 'plug',
): Sizes {
  const { dowels = [], oilPassages = [], faceParts = [] } = document.case
  switch (kind) {
    case 'dowel':
      return { diameter: dowels.findLast((each) => each.face === face)?.diameter }
    case 'oil-passage':
      return { size: oilPassages.findLast((each) => each.face === face)?.size }
    case 'face-part':
      return faceParts.findLast((each) => each.face === face && each.kind === of) ?? {}
    case 'keep-out':
      return document.beads?.findLast((bead) => bead.face === face)?.keepOut?.at(-1) ?? {}
    case 'saddle':
    case 'rod':
    case 'balance':
      return bearingsOf(document, kind).at(-1) ?? {}
    case 'fastener':
    case 'corner':
    case 'bead-point':
      return {}
    default:
      return kind satisfies never
  }
}

/**
 * Puts something new on a face, its id and number counted on from the last of its kind there. Refuses `draft-off-face`, and
 * `draft-size-unsaid` where no size is said and none of its kind is there: no size is made up, nor which way a lip points
 * (`draft-way-unsaid`); a corner where the face has no outline yet, `draft-no-outline`.
 */
export function placed(
  document: SpecDocument,
  face: string,
  at: Point,
  thing: NewThing,
): Outcome<DocumentWithThing> {
  switch (thing.kind) {
    case 'fastener':
    case 'dowel':
    case 'oil-passage':
    case 'face-part':
      return placedListed(document, face, at, thing)
    case 'saddle':
    case 'rod':
    case 'balance':
      return placedBearing(document, face, at, thing)
    case 'corner': {
      if (document.case.faces.find(({ id }) => id === face)?.outline === undefined)
        return refused('draft-no-outline', {})
      const made = withPoint(document, 'corner', face, at)
      return done({ document: made.document, thing: { kind: 'corner', id: pointId(face, made.index) } })
    }
    case 'bead-point': {
      const named = { kind: 'bead-point', id: `${thing.bead}~1` } as const
      if (!liesOn(document, face, at)) return offFace(document, named)
      const made = withPoint(document, 'bead-point', thing.bead, at)
      return done({ document: made.document, thing: { ...named, id: pointId(thing.bead, made.index) } })
    }
    case 'keep-out':
      return placedZone(document, face, at, thing)
    default:
      return thing satisfies never
  }
}

const stems = { fastener: '', dowel: 'dowel-', 'oil-passage': 'oil-', 'face-part': 'part-' } as const

function placedListed(
  document: SpecDocument,
  face: string,
  at: Point,
  thing: Extract<NewThing, { readonly kind: ListedKind }>,
): Outcome<DocumentWithThing> {
  const list = listOf(document, thing.kind)
  const last = list.findLast((each) => each.face === face) ?? list.at(-1)
  const taken = new Set(list.map(({ id }) => id))
  const like = last?.face === face ? last.id : `${face.slice(0, 30)}-${stems[thing.kind]}0`
  const id = nextId(taken, like)
  const named = { kind: thing.kind, id }
  if (!liesOn(document, face, at)) return offFace(document, named)
  const unit = unitOf(last?.at[0] ?? document.case.bore)
  const common = { id, face, at: [lengthTextOf(at.x, unit), lengthTextOf(at.y, unit)] as [string, string] }
  const entry = entryOf(document, common, thing)
  if (entry === null) return refused('draft-size-unsaid', {})
  if (entry === 'way') return refused('draft-way-unsaid', {})
  return done({ document: withList(document, thing.kind, [...list, entry]), thing: named })
}

interface Common {
  readonly id: string
  readonly face: string
  readonly at: [string, string]
}

function entryOf(
  document: SpecDocument,
  common: Common,
  thing: Extract<NewThing, { readonly kind: ListedKind }>,
) {
  switch (thing.kind) {
    case 'fastener': {
      const onFace = document.fasteners.filter(({ face }) => face === common.face)
      const numbers = onFace.map(({ number }) => number)
      const number = nextNumber(numbers, numbers.at(-1) ?? '1')
      return { ...common, number, group: thing.group, where: thing.where }
    }
    case 'dowel': {
      const { diameter = lastSizes(document, common.face, 'dowel').diameter } = thing
      return diameter === undefined ? null : { ...common, diameter }
    }
    case 'oil-passage': {
      const { name, size = lastSizes(document, common.face, 'oil-passage').size } = thing
      return size === undefined ? null : { ...common, name, size: copyOf(size) }
    }
    case 'face-part':
      return facePartOf(lastSizes(document, common.face, 'face-part', thing.of), common, thing)
    default:
      return thing satisfies never
  }
}

function facePartOf(
  last: Sizes,
  common: Common,
  { of: kind, name, way, ...sizes }: Extract<NewThing, { readonly kind: 'face-part' }>,
) {
  const { size = last.size, diameter = last.diameter, shaft = last.shaft } = sizes
  const named = { ...common, kind, name }
  if (kind === 'strainer') return size === undefined ? null : { ...named, size: copyOf(size) }
  if (diameter === undefined) return null
  if (kind === 'plug') return { ...named, diameter }
  const isSeal = kind !== 'check-valve'
  if (isSeal && shaft === undefined) return null
  if (way === undefined) return 'way'
  return { ...named, diameter, ...(isSeal ? { shaft, lip: way } : { flow: way }) }
}

const copyOf = (size: Size): [string, string] => [size[0], size[1]]

const firstIds = { saddle: 'M0', rod: 'B0', balance: 'S0' } as const

function placedBearing(
  document: SpecDocument,
  face: string,
  at: Point,
  { kind, ...sizes }: Extract<NewThing, { readonly kind: BearingKind }>,
): Outcome<DocumentWithThing> {
  const last = lastSizes(document, face, kind)
  const { width = last.width, diameter = last.diameter } = sizes
  if (width === undefined || diameter === undefined) return refused('draft-size-unsaid', {})
  const unit = unitOf(bearingsOf(document, kind).at(-1)?.at ?? document.case.bore)
  const like = bearingsOf(document, kind).at(-1)?.id ?? firstIds[kind]
  const id = nextId(idsOfBearings(document), like)
  const bearing = {
    ...{ id, at: lengthTextOf(at.x, unit), width, diameter },
    ...(kind === 'rod' && { cylinder: freeCylinder(document) }),
    ...(kind === 'balance' && { across: lengthTextOf(at.y, unit) }),
  }
  return done({ document: withBearing(document, kind, bearing), thing: { kind, id } })
}

function placedZone(
  document: SpecDocument,
  face: string,
  at: Point,
  thing: Extract<NewThing, { readonly kind: 'keep-out' }>,
): Outcome<DocumentWithThing> {
  const { bead: id, name, size = lastSizes(document, face, 'keep-out').size } = thing
  const bead = document.beads?.find((each) => each.id === id)
  const zones = bead?.keepOut ?? []
  const named = { kind: 'keep-out', id: pointId(id, zones.length) } as const
  if (!liesOn(document, face, at)) return offFace(document, named)
  if (size === undefined || bead === undefined) return refused('draft-size-unsaid', {})
  const unit = unitOf(bead.path[0]?.[0] ?? document.case.bore)
  const zone = {
    name,
    size: copyOf(size),
    at: [lengthTextOf(at.x, unit), lengthTextOf(at.y, unit)] as [string, string],
  }
  const beads = document.beads?.map((each) => (each === bead ? { ...each, keepOut: [...zones, zone] } : each))
  return done({ document: { ...document, ...(beads && { beads }) }, thing: named })
}
