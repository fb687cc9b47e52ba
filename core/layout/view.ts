import type { EngineCase, Face } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import type { Point } from '../plane/index.ts'
import type { View } from './facts.ts'

/** A place in the engine's own frame, in mm, turned into its place on the sheet (x right, y down), in mm. */
export type Projection = (x: number, y: number) => Point

/** Columns of a matrix of −1, 0 and 1: where one millimetre of growing x, and of growing y, goes on the sheet. */
type Basis = readonly [xx: number, xy: number, yx: number, yy: number]

/**
 * From above the nose is at the left and y grows up the sheet. From below is the engine rolled about its crank axis: the
 * nose stays, y is mirrored.
 *
 * A side or an end of the case is never looked at through the metal. Upright it has its height up the sheet, and seen
 * from the plus side the nose is at the right. 'Below' is the same engine upside down, which turns such a face by half a
 * turn. In a face across an end, x is the place across the engine and y the height.
 */
const bases: Readonly<Record<Face['plane'], Readonly<Record<View['from'], Basis>>>> = {
  plan: { above: [1, 0, 0, -1], below: [1, 0, 0, 1] },
  'plus-side': { above: [-1, 0, 0, -1], below: [1, 0, 0, 1] },
  'minus-side': { above: [1, 0, 0, -1], below: [-1, 0, 0, 1] },
  nose: { above: [-1, 0, 0, -1], below: [1, 0, 0, 1] },
  drive: { above: [1, 0, 0, -1], below: [-1, 0, 0, 1] },
}

export function projectionOf(plane: Face['plane'], view: View): Projection {
  let [xx, xy, yx, yy] = bases[plane][view.from]
  for (let turn = 0; turn < view.turn; turn += 1) [xx, xy, yx, yy] = [-xy, xx, -yy, yx]
  // Adding 0 turns −0 into 0, so that equal places are equal data.
  return (x, y) => ({ x: xx * x + yx * y + 0, y: xy * x + yy * y + 0 })
}

type SeenFrom = Parameters<Words['drawing']['view']>[0]['from']

/** What the drawing shows, for example `Case joint, seen from below, nose at the left`. */
export function viewInWords(words: Words, engineCase: EngineCase, face: Face, view: View): string {
  const nose = acrossAnEnd(face) ? null : noseSide(face, view)
  return words.drawing.view({ face: face.name, from: seenFrom(engineCase, face, view), nose })
}

function seenFrom({ sides }: EngineCase, { plane }: Face, { from }: View): SeenFrom {
  const upsideDown = from === 'below'
  switch (plane) {
    case 'plan':
      return { of: from }
    case 'plus-side':
      return { of: 'side', side: sides.plus, upsideDown }
    case 'minus-side':
      return { of: 'side', side: sides.minus, upsideDown }
    case 'nose':
      return { of: 'nose', upsideDown }
    case 'drive':
      return { of: 'drive-end', upsideDown }
    default:
      return plane satisfies never
  }
}

export function acrossAnEnd(face: Face): boolean {
  return face.plane === 'nose' || face.plane === 'drive'
}

/** A side of the sheet. */
export type SheetSide = 'left' | 'top' | 'right' | 'bottom'

/** Where the nose points; of no meaning for a face across an end. */
export function noseSide(face: Face, view: View): SheetSide {
  const drive = projectionOf(face.plane, view)(1, 0)
  if (drive.x !== 0) return drive.x > 0 ? 'left' : 'right'
  return drive.y > 0 ? 'top' : 'bottom'
}
