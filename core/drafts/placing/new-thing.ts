import type { Point } from '../../plane/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import type { Where } from './copies.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { liesOn, offFace } from './face.ts'
import { nextId, nextNumber } from './naming.ts'
import { lengthTextOf, unitOf } from './position.ts'
import { listOf, withList, type Thing } from './thing.ts'

/** What is put on a face: a fastener of a group, a dowel, an oil way. A size that is not said is that of the last one on the face. */
export type NewThing =
  | { readonly kind: 'fastener'; readonly group: string; readonly where: Where }
  | { readonly kind: 'dowel'; readonly diameter?: string | undefined }
  | {
      readonly kind: 'oil-passage'
      readonly name: Where
      readonly size?: readonly [string, string] | undefined
    }

/** A document with something new in it, and which it is. */
export interface Placed {
  readonly document: SpecDocument
  readonly thing: Thing
}

/** The sizes of the last dowels and oil ways on a face: those of the next one, unless it is said. */
export function lastSizes(document: SpecDocument, face: string) {
  const { dowels = [], oilPassages = [] } = document.case
  return {
    dowel: dowels.findLast((each) => each.face === face)?.diameter,
    oilWay: oilPassages.findLast((each) => each.face === face)?.size,
  }
}

/**
 * Puts something new on a face, its id and number counted on from the last of its kind there. Refuses `draft-off-face`, and
 * `draft-size-unsaid` where no size is said and none of its kind is on the face: no size is made up.
 */
export function placed(document: SpecDocument, face: string, at: Point, thing: NewThing): Outcome<Placed> {
  const list = listOf(document, thing.kind)
  const last = list.findLast((each) => each.face === face) ?? list.at(-1)
  const taken = new Set(list.map(({ id }) => id))
  const like = last?.face === face ? last.id : `${face.slice(0, 30)}-${stems[thing.kind]}0`
  const id = nextId(taken, like)
  const named = { kind: thing.kind, id }
  if (!liesOn(document, face, at)) return offFace(document, named)
  const unit = unitOf(last?.at[0] ?? 'mm')
  const common = { id, face, at: [lengthTextOf(at.x, unit), lengthTextOf(at.y, unit)] as [string, string] }
  const entry = entryOf(document, common, thing)
  if (entry === null) return refused('draft-size-unsaid', {})
  return done({ document: withList(document, thing.kind, [...list, entry]), thing: named })
}

const stems = { fastener: '', dowel: 'dowel-', 'oil-passage': 'oil-' } as const

function entryOf(
  document: SpecDocument,
  common: { readonly id: string; readonly face: string; readonly at: [string, string] },
  thing: NewThing,
) {
  switch (thing.kind) {
    case 'fastener': {
      const onFace = document.fasteners.filter(({ face }) => face === common.face)
      const numbers = onFace.map(({ number }) => number)
      const number = nextNumber(numbers, numbers.at(-1) ?? '1')
      return { ...common, number, group: thing.group, where: thing.where }
    }
    case 'dowel': {
      const { diameter = lastSizes(document, common.face).dowel } = thing
      return diameter === undefined ? null : { ...common, diameter }
    }
    case 'oil-passage': {
      const { name, size = lastSizes(document, common.face).oilWay } = thing
      return size === undefined ? null : { ...common, name, size: [...size] as [string, string] }
    }
    default:
      return thing satisfies never
  }
}
