import type { Point } from '../../plane/index.ts'
import { done, type Outcome } from '../../problem/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { bearingAt, bearingsOf, freeCylinder, withBearing } from './bearings.ts'
import { mayLieAt, offFace } from './face.ts'
import { listOf, withList } from './listed.ts'
import { nextId, nextNumber } from './naming.ts'
import { pointId, withPoint } from './paths.ts'
import { placeTexts } from './position.ts'
import {
  isBearing,
  isListed,
  type BearingKind,
  type ListedKind,
  type PlacedThing,
  type Thing,
} from './thing.ts'
import { placedThings, thingsOn } from './things.ts'

/** A document with copies in it, and which they are. */
export interface DocumentWithCopies {
  readonly document: SpecDocument
  readonly copies: readonly Thing[]
}

/** Nearer than this two things of one kind are the same one: nothing is drilled twice. Nanometres. */
const sameSpot = 100_000

/**
 * Copies of things, each with an id and a number of its own, at as many places as `to` gives for each. Where one of its kind is
 * already there, none is made. Refuses `draft-off-face`.
 */
export function withCopies(
  document: SpecDocument,
  things: readonly Thing[],
  to: (thing: PlacedThing) => readonly Point[],
  where: (text: FastenerPlace) => FastenerPlace = (text) => text,
): Outcome<DocumentWithCopies> {
  let changed = document
  const copies: Thing[] = []
  for (const thing of placedThings(document, things))
    for (const at of to(thing)) {
      if (!mayLieAt(document, thing, at)) return offFace(document, thing)
      if (isTaken(changed, thing, at)) continue
      const made = withCopy(changed, thing, at, where)
      changed = made.document
      copies.push({ kind: thing.kind, id: made.id })
    }
  return done({ document: changed, copies })
}

/** What is said of the place of a fastener, in one language or in several. */
export type FastenerPlace = SpecDocument['fasteners'][number]['where']

function isTaken(document: SpecDocument, { kind, face }: PlacedThing, at: Point): boolean {
  return thingsOn(document, face, [kind]).some(
    (each) => Math.hypot(each.at.x - at.x, each.at.y - at.y) < sameSpot,
  )
}

interface Copy {
  readonly id: string
  readonly document: SpecDocument
}

function withCopy(
  document: SpecDocument,
  { kind, id }: PlacedThing,
  at: Point,
  where: (text: FastenerPlace) => FastenerPlace,
): Copy {
  if (isListed(kind)) return copyOfListed(document, kind, id, at, where)
  if (isBearing(kind)) return copyOfBearing(document, kind, id, at)
  const [of = ''] = id.split('~')
  if (kind === 'keep-out') return copyOfZone(document, id, at)
  const made = withPoint(document, kind, of, at)
  return { id: pointId(of, made.index), document: made.document }
}

function copyOfListed(
  document: SpecDocument,
  kind: ListedKind,
  like: string,
  at: Point,
  where: (text: FastenerPlace) => FastenerPlace,
): Copy {
  const list = listOf(document, kind)
  const original = list.find((each) => each.id === like)!
  const id = nextId(new Set(list.map((each) => each.id)), like)
  const copy = { ...original, id, at: placeTexts(at, original.at) }
  return { id, document: withList(document, kind, [...list, numbered(document, copy, where)]) }
}

/** Another one of the same size, for the next cylinder; whether the thrust washers are at it is said of one alone. */
function copyOfBearing(document: SpecDocument, kind: BearingKind, like: string, at: Point): Copy {
  const { thrust: _, ...original } = bearingsOf(document, kind).find(
    (each) => each.id === like,
  )! as ReturnType<typeof bearingsOf>[number] & { readonly thrust?: boolean }
  const id = nextId(idsOfBearings(document), like)
  const copy = {
    ...bearingAt(original, at),
    id,
    ...(kind === 'rod' && { cylinder: freeCylinder(document) }),
  }
  return { id, document: withBearing(document, kind, copy) }
}

/** A build keeps its shells by position, whatever kind of bearing it is. */
export function idsOfBearings(document: SpecDocument): ReadonlySet<string> {
  const kinds = ['saddle', 'rod', 'balance'] as const
  return new Set(kinds.flatMap((kind) => bearingsOf(document, kind).map(({ id }) => id)))
}

function copyOfZone(document: SpecDocument, id: string, at: Point): Copy {
  const [of = '', number = '1'] = id.split('~')
  let count = 0
  const beads = (document.beads ?? []).map((bead) => {
    const zone = bead.keepOut?.[Number(number) - 1]
    if (bead.id !== of || bead.keepOut === undefined || zone === undefined) return bead
    count = bead.keepOut.length
    return { ...bead, keepOut: [...bead.keepOut, { ...zone, at: placeTexts(at, zone.at) }] }
  })
  return { id: pointId(of, count), document: { ...document, beads } }
}

function numbered<Copy extends { readonly face: string }>(
  { fasteners }: SpecDocument,
  copy: Copy,
  where: (text: FastenerPlace) => FastenerPlace,
): Copy {
  if (!('number' in copy)) return copy
  const fastener = copy as Copy & SpecDocument['fasteners'][number]
  const taken = fasteners.filter(({ face }) => face === copy.face).map(({ number }) => number)
  return { ...fastener, number: nextNumber(taken, fastener.number), where: where(fastener.where) }
}
