/** A place in a plane: in the unit of the caller, mm of a face or of a sheet, or nanometres. */
export interface Point {
  readonly x: number
  readonly y: number
}

/** The length of a line that goes so far across and so far down. `Math.hypot`, which also minds overflow, takes many times as long. */
export function spanOf(across: number, down: number): number {
  return Math.sqrt(across * across + down * down)
}

/** The direction, or the opposite one. */
export function turned({ x, y }: Point, side: 1 | -1): Point {
  return { x: x * side, y: y * side }
}
