import type { Length } from '../quantity/index.ts'

/** A place on a joint face, in nanometres. */
export type Point = readonly [number, number]
export type Segment = readonly [Point, Point]

/** An upright rectangle by its middle and its extent. */
export interface Box {
  readonly at: readonly [Length, Length]
  readonly size: readonly [Length, Length]
}

/** The pieces of a path from point to point, and back to the first where it is closed. */
export function segmentsOf(path: readonly Point[], closed: boolean): readonly Segment[] {
  return path.flatMap((from, index): Segment[] => {
    const to = path[index + 1] ?? (closed ? path[0] : undefined)
    return to === undefined ? [] : [[from, to]]
  })
}

/** Whether a point lies inside a polygon or on its edge (even-odd rule). */
export function insidePolygon(polygon: readonly Point[], [x, y]: Point): boolean {
  let inside = false
  for (const [a, b] of segmentsOf(polygon, true)) {
    if (distanceToSegment([x, y], [a, b]) === 0) return true
    const crosses = a[1] > y !== b[1] > y
    if (crosses && x < ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside
  }
  return inside
}

export function distanceToSegment([x, y]: Point, [[ax, ay], [bx, by]]: Segment): number {
  const [dx, dy] = [bx - ax, by - ay]
  const length2 = dx * dx + dy * dy
  const along = length2 === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / length2))
  return Math.hypot(x - ax - along * dx, y - ay - along * dy)
}

/** Whether two segments have a point in common, ends included. */
export function segmentsMeet([a, b]: Segment, [c, d]: Segment): boolean {
  const side = (p: Point, q: Point, r: Point): number =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]))
  const [s1, s2, s3, s4] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)]
  if (s1 !== s2 && s3 !== s4) return true
  return (
    (s1 === 0 && distanceToSegment(c, [a, b]) === 0) ||
    (s2 === 0 && distanceToSegment(d, [a, b]) === 0) ||
    (s3 === 0 && distanceToSegment(a, [c, d]) === 0) ||
    (s4 === 0 && distanceToSegment(b, [c, d]) === 0)
  )
}

/** The gap between a segment and a box; 0 where they touch or overlap. */
export function distanceToBox(segment: Segment, { at, size }: Box): number {
  const [left, right] = [at[0] - size[0] / 2, at[0] + size[0] / 2]
  const [bottom, top] = [at[1] - size[1] / 2, at[1] + size[1] / 2]
  const corners: readonly Point[] = [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ]
  const [from] = segment
  if (from[0] >= left && from[0] <= right && from[1] >= bottom && from[1] <= top) return 0
  const sides = segmentsOf(corners, true)
  if (sides.some((side) => segmentsMeet(side, segment))) return 0
  return Math.min(
    ...corners.map((corner) => distanceToSegment(corner, segment)),
    ...segment.flatMap((end) => sides.map((side) => distanceToSegment(end, side))),
  )
}

/** Whether a polygon's edges meet anywhere but at the corners they share. */
export function crossesItself(polygon: readonly Point[]): boolean {
  const edges = segmentsOf(polygon, true)
  return edges.some((first, i) =>
    edges.some((second, k) => {
      const neighbours = k === i + 1 || (i === 0 && k === edges.length - 1)
      return k > i && !neighbours && segmentsMeet(first, second)
    }),
  )
}
