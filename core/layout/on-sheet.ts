import { inMillimetres } from '../quantity/index.ts'
import type { Point } from '../plane/index.ts'
import type { Drawing } from './drawing.ts'
import type { OnFace } from './case/on-face.ts'
import type { Box } from './scene/scene.ts'

/** The spec's place on the sheet. */
export function placeOf({ place }: Drawing, [x, y]: OnFace['fasteners'][number]['at']): Point {
  return place(inMillimetres(x), inMillimetres(y))
}

export function onSheet({ place }: Drawing, points: readonly Point[]): readonly Point[] {
  return points.map(({ x, y }) => place(x, y))
}

/** The corners of a box of the engine's own frame, on the sheet. */
export function cornersOnSheet({ place }: Drawing, { left, top, width, height }: Box): readonly Point[] {
  return [
    place(left, top),
    place(left + width, top),
    place(left + width, top + height),
    place(left, top + height),
  ]
}

export function flat(points: readonly Point[]): readonly number[] {
  return points.flatMap(({ x, y }) => [x, y])
}

/** A point some way along and across the engine from another, both as seen on the sheet. */
export function moved({ along, across }: Drawing, { x, y }: Point, byAlong: number, byAcross: number): Point {
  return {
    x: x + along.x * byAlong + across.x * byAcross,
    y: y + along.y * byAlong + across.y * byAcross,
  }
}
