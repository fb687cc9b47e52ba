import { spanOf, type Point } from './point.ts'

/** An upright rectangle: `left` and `top` are its least x and y. */
export interface Box {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** The least box that holds all points; of none, an empty box at the origin. */
export function boxAround(points: readonly Point[]): Box {
  if (points.length === 0) return { left: 0, top: 0, width: 0, height: 0 }
  let left = Infinity
  let top = Infinity
  let right = -Infinity
  let bottom = -Infinity
  for (const { x, y } of points) {
    left = Math.min(left, x)
    top = Math.min(top, y)
    right = Math.max(right, x)
    bottom = Math.max(bottom, y)
  }
  return { left, top, width: right - left, height: bottom - top }
}

/** Between two opposite corners, whichever they are. */
export function boxBetween(a: Point, b: Point): Box {
  return {
    left: Math.min(a.x, b.x),
    top: Math.min(a.y, b.y),
    width: Math.abs(a.x - b.x),
    height: Math.abs(a.y - b.y),
  }
}

export function grown(box: Box, by: number): Box {
  return { left: box.left - by, top: box.top - by, width: box.width + 2 * by, height: box.height + 2 * by }
}

export function middleOf(box: Box): Point {
  return { x: box.left + box.width / 2, y: box.top + box.height / 2 }
}

/** Clockwise from the upper left. */
export function cornersOf({ left, top, width, height }: Box): readonly Point[] {
  return [
    { x: left, y: top },
    { x: left + width, y: top },
    { x: left + width, y: top + height },
    { x: left, y: top + height },
  ]
}

/** Whether the two share an area; touching edges do not. */
export function overlap(a: Box, b: Box): boolean {
  return (
    a.left < b.left + b.width &&
    b.left < a.left + a.width &&
    a.top < b.top + b.height &&
    b.top < a.top + a.height
  )
}

export function holds(outer: Box, inner: Box): boolean {
  return (
    inner.left >= outer.left &&
    inner.top >= outer.top &&
    inner.left + inner.width <= outer.left + outer.width &&
    inner.top + inner.height <= outer.top + outer.height
  )
}

/** 0 inside the box. */
export function distanceTo({ left, top, width, height }: Box, { x, y }: Point): number {
  const dx = Math.max(left - x, 0, x - left - width)
  const dy = Math.max(top - y, 0, y - top - height)
  return spanOf(dx, dy)
}
