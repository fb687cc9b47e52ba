import type { Point } from './point.ts'
import { distanceToSegment, segmentsMeet } from './segment.ts'

type Side = readonly [from: Point, to: Point]

/** The pieces of a path from point to point, and back to the first where it is closed. */
export function sidesOf(path: readonly Point[], closed: boolean): readonly Side[] {
  return path.flatMap((from, index): Side[] => {
    const to = path[index + 1] ?? (closed ? path[0] : undefined)
    return to === undefined ? [] : [[from, to]]
  })
}

/** Whether a point lies inside a polygon or on its edge (even-odd rule). */
export function insidePolygon(polygon: readonly Point[], point: Point): boolean {
  let inside = false
  for (const [a, b] of sidesOf(polygon, true)) {
    if (distanceToSegment(point, a, b) === 0) return true
    const crosses = a.y > point.y !== b.y > point.y
    if (crosses && point.x < ((b.x - a.x) * (point.y - a.y)) / (b.y - a.y) + a.x) inside = !inside
  }
  return inside
}

/** Whether a polygon's edges meet anywhere but at the corners they share. */
export function crossesItself(polygon: readonly Point[]): boolean {
  const sides = sidesOf(polygon, true)
  return sides.some((first, i) =>
    sides.some((second, k) => {
      const neighbours = k === i + 1 || (i === 0 && k === sides.length - 1)
      return k > i && !neighbours && segmentsMeet(...first, ...second)
    }),
  )
}
