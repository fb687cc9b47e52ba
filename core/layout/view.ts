import type { EngineCase, Face } from '../engine/index.ts'
import type { Point } from './box.ts'
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

/** What the drawing shows, for example `Case joint, seen from below, nose at the left`. */
export function viewInWords(engineCase: EngineCase, face: Face, view: View): string {
  const upsideDown = view.from === 'below' ? ', upside down' : ''
  const seen: Readonly<Record<Face['plane'], string>> = {
    plan: `seen from ${view.from}`,
    'plus-side': `seen from the ${engineCase.sides.plus}${upsideDown}`,
    'minus-side': `seen from the ${engineCase.sides.minus}${upsideDown}`,
    nose: `seen from the nose${upsideDown}`,
    drive: `seen from the drive end${upsideDown}`,
  }
  const nose = acrossAnEnd(face) ? '' : `, nose at the ${noseSide(face, view)}`
  return `${face.name}, ${seen[face.plane]}${nose}`
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
