import type { Point } from '../../plane/index.ts'
import { done, type Outcome } from '../../problem/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { liesOn, offFace } from './face.ts'
import { nextId, nextNumber } from './naming.ts'
import { placeTexts } from './position.ts'
import { listOf, placedThings, thingsOn, withList, type PlacedThing, type Thing } from './thing.ts'

/** A document with copies in it, and which they are. */
export interface Copied {
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
  where: (text: Where) => Where = (text) => text,
): Outcome<Copied> {
  let changed = document
  const copies: Thing[] = []
  for (const thing of placedThings(document, things))
    for (const at of to(thing)) {
      if (!liesOn(document, thing.face, at)) return offFace(document, thing)
      if (isTaken(changed, thing, at)) continue
      const made = withCopy(changed, thing, at, where)
      changed = made.document
      copies.push({ kind: thing.kind, id: made.id })
    }
  return done({ document: changed, copies })
}

/** What is said of the place of a fastener, in one language or in several. */
export type Where = SpecDocument['fasteners'][number]['where']

function isTaken(document: SpecDocument, { kind, face }: PlacedThing, at: Point): boolean {
  return thingsOn(document, face).some(
    (each) => each.kind === kind && Math.hypot(each.at.x - at.x, each.at.y - at.y) < sameSpot,
  )
}

function withCopy(document: SpecDocument, thing: PlacedThing, at: Point, where: (text: Where) => Where) {
  const list = listOf(document, thing.kind)
  const original = list.find(({ id }) => id === thing.id)!
  const id = nextId(new Set(list.map((each) => each.id)), thing.id)
  const copy = { ...original, id, at: placeTexts(at, original.at) }
  return { id, document: withList(document, thing.kind, [...list, numbered(document, copy, where)]) }
}

function numbered<Copy extends { readonly face: string }>(
  { fasteners }: SpecDocument,
  copy: Copy,
  where: (text: Where) => Where,
): Copy {
  if (!('number' in copy)) return copy
  const fastener = copy as Copy & SpecDocument['fasteners'][number]
  const taken = fasteners.filter(({ face }) => face === copy.face).map(({ number }) => number)
  return { ...fastener, number: nextNumber(taken, fastener.number), where: where(fastener.where) }
}
