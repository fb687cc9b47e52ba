import type { Point } from '../../plane/index.ts'
import type { Outcome } from '../../problem/index.ts'
import { withCopies, type DocumentWithCopies, type FastenerPlace } from './copies.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { faceOf } from './face.ts'
import type { Thing } from './thing.ts'

/** The place on the other side of the crank's axis; in a face across an end, on the other side of the upright through it. */
export function mirroredPlace(document: SpecDocument, face: string, { x, y }: Point): Point {
  const plane = faceOf(document, face)?.plane
  return plane === 'nose' || plane === 'drive' ? { x: 0 - x, y } : { x, y: 0 - y }
}

/**
 * Copies of things on the other side of the axis, none for one that lies on it. Where what is said of a fastener's place names a
 * side of the engine, the copy's names the other. Refuses `draft-off-face`.
 */
export function mirrored(document: SpecDocument, things: readonly Thing[]): Outcome<DocumentWithCopies> {
  const { plus, minus } = document.case.sides
  return withCopies(
    document,
    things,
    ({ face, at }) => [mirroredPlace(document, face, at)],
    (where) => onOtherSide(where, plus, minus),
  )
}

function onOtherSide(where: FastenerPlace, plus: FastenerPlace, minus: FastenerPlace): FastenerPlace {
  if (typeof where === 'string') return swapped(where, inAny(plus), inAny(minus))
  const entries = Object.entries(where).map(([language, text]) => {
    const of = (side: FastenerPlace) =>
      typeof side === 'string' ? side : side[language as keyof typeof side]
    return [language, text === undefined ? text : swapped(text, of(plus), of(minus))]
  })
  return Object.fromEntries(entries) as FastenerPlace
}

function inAny(text: FastenerPlace): string | undefined {
  return typeof text === 'string' ? text : (text.en ?? text.de ?? text.es)
}

function swapped(text: string, plus: string | undefined, minus: string | undefined): string {
  if (!plus || !minus) return text
  if (text.includes(plus)) return text.replace(plus, minus)
  return text.replace(minus, plus)
}
