import type { Box } from './scene.ts'

export interface Point {
  readonly x: number
  readonly y: number
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

/** The point of the box that is nearest; the point itself when it lies inside. */
export function nearestIn(box: Box, { x, y }: Point): Point {
  return {
    x: Math.min(Math.max(x, box.left), box.left + box.width),
    y: Math.min(Math.max(y, box.top), box.top + box.height),
  }
}

/** The length of a way of so much across and so much down. `Math.hypot`, which also minds overflow, takes many times as long. */
export function spanOf(across: number, down: number): number {
  return Math.sqrt(across * across + down * down)
}

/** 0 inside the box. */
export function distanceTo({ left, top, width, height }: Box, { x, y }: Point): number {
  const dx = Math.max(left - x, 0, x - left - width)
  const dy = Math.max(top - y, 0, y - top - height)
  return spanOf(dx, dy)
}

/** Between the nearest points of two boxes; 0 where they meet. */
export function gapBetween(a: Box, b: Box): number {
  const dx = Math.max(b.left - a.left - a.width, a.left - b.left - b.width, 0)
  const dy = Math.max(b.top - a.top - a.height, a.top - b.top - b.height, 0)
  return spanOf(dx, dy)
}

/** Whether any of the segment lies in the box (Liang–Barsky clipping). */
export function segmentMeets(box: Box, a: Point, b: Point): boolean {
  let from = 0
  let to = 1
  const clip = (along: number, room: number): boolean => {
    if (along === 0) return room >= 0
    const at = room / along
    if (along < 0) from = Math.max(from, at)
    else to = Math.min(to, at)
    return from <= to
  }
  const dx = b.x - a.x
  const dy = b.y - a.y
  return (
    clip(-dx, a.x - box.left) &&
    clip(dx, box.left + box.width - a.x) &&
    clip(-dy, a.y - box.top) &&
    clip(dy, box.top + box.height - a.y)
  )
}

/** Whether two segments cross; those that only touch, or lie in one line, do not. */
export function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (from: Point, to: Point, { x, y }: Point): number =>
    Math.sign((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x))
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}

/** From a point to the nearest point of a segment. */
export function distanceToSegment(point: Point, a: Point, b: Point): number {
  const { x, y } = nearestOnSegment(point, a, b)
  return spanOf(x - point.x, y - point.y)
}

export function nearestOnSegment({ x, y }: Point, a: Point, b: Point): Point {
  const dx = b.x - a.x
  const dy = b.y - a.y
  const length2 = dx * dx + dy * dy
  const share = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / length2))
  return { x: a.x + share * dx, y: a.y + share * dy }
}

/** The direction, or the opposite one. */
export function turned({ x, y }: Point, side: 1 | -1): Point {
  return { x: x * side, y: y * side }
}
