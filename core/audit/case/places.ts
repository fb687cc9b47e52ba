import type { Box, Point } from '../../plane/index.ts'
import type { Length } from '../../quantity/index.ts'

/** A place on a joint face as a spec has it. */
export type Place = readonly [Length, Length]

/** An upright rectangle as a spec has it: its middle and its extent. */
export interface Zone {
  readonly at: Place
  readonly size: Place
}

/** In nanometres. */
export function pointAt([x, y]: Place): Point {
  return { x, y }
}

export function pointsOf(path: readonly Place[]): readonly Point[] {
  return path.map(pointAt)
}

export function boxAt({ at: [x, y], size: [width, height] }: Zone): Box {
  return { left: x - width / 2, top: y - height / 2, width, height }
}
