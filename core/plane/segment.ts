import { cornersOf, distanceTo, type Box } from './box.ts'
import { spanOf, type Point } from './point.ts'

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

/** Whether any of the segment lies in the box (Liang–Barsky clipping). */
function segmentMeets(box: Box, a: Point, b: Point): boolean {
  let from = 0
  let to = 1
  const clip = (along: number, distance: number): boolean => {
    if (along === 0) return distance >= 0
    const at = distance / along
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

/** The gap between a segment and a box; 0 where they touch or overlap. */
export function gapToBox(box: Box, a: Point, b: Point): number {
  if (segmentMeets(box, a, b)) return 0
  return Math.min(
    distanceTo(box, a),
    distanceTo(box, b),
    ...cornersOf(box).map((corner) => distanceToSegment(corner, a, b)),
  )
}

/** Whether two segments have a point in common, ends included. */
export function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  const [s1, s2, s3, s4] = [sideOf(a, b, c), sideOf(a, b, d), sideOf(c, d, a), sideOf(c, d, b)]
  if (s1 !== s2 && s3 !== s4) return true
  return (
    (s1 === 0 && distanceToSegment(c, a, b) === 0) ||
    (s2 === 0 && distanceToSegment(d, a, b) === 0) ||
    (s3 === 0 && distanceToSegment(a, c, d) === 0) ||
    (s4 === 0 && distanceToSegment(b, c, d) === 0)
  )
}

/** On which side of the line through two points a third lies: 1 or -1; 0 on the line. */
function sideOf(from: Point, to: Point, { x, y }: Point): number {
  return Math.sign((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x))
}
