import { nearestOnSegment, spanOf, type Point } from '../../plane/index.ts'

/** Points on each rounded corner: enough that an arc of a few millimetres looks round at any zoom. */
const stepsInCorner = 5

/**
 * The polygon with its corners rounded by `radius`, or by less where an edge is too short for it. Each corner becomes a
 * quadratic curve that stays on the inner side of the corner, so nothing grows.
 */
export function rounded(corners: readonly Point[], radius: number): readonly Point[] {
  return corners.flatMap((corner, index) => {
    const before = corners.at(index - 1)
    const after = corners[(index + 1) % corners.length]
    if (before === undefined || after === undefined) return [corner]
    const from = towards(corner, before, radius)
    const to = towards(corner, after, radius)
    return Array.from({ length: stepsInCorner + 1 }, (_, step) => {
      const t = step / stepsInCorner
      return {
        x: (1 - t) ** 2 * from.x + 2 * t * (1 - t) * corner.x + t ** 2 * to.x,
        y: (1 - t) ** 2 * from.y + 2 * t * (1 - t) * corner.y + t ** 2 * to.y,
      }
    })
  })
}

function towards(from: Point, to: Point, by: number): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const share = length === 0 ? 0 : Math.min(by / length, 0.5)
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
}

/** Where the polygon begins and ends across, at one place along; null beside the polygon. */
export function spanAt(polygon: readonly Point[], x: number): { least: number; most: number } | null {
  let least = Infinity
  let most = -Infinity
  polygon.forEach((a, index) => {
    const b = polygon[(index + 1) % polygon.length]
    if (b === undefined || Math.min(a.x, b.x) > x || Math.max(a.x, b.x) < x) return
    const ends = a.x === b.x ? [a.y, b.y] : [a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)]
    least = Math.min(least, ...ends)
    most = Math.max(most, ...ends)
  })
  return least <= most ? { least, most } : null
}

/** The widest band across that lies in the polygon all the way from `from` to `to`; null where there is none. */
export function spanOver(
  polygon: readonly Point[],
  from: number,
  to: number,
): { least: number; most: number } | null {
  const places = [from, to, ...polygon.map(({ x }) => x).filter((x) => x > from && x < to)]
  let least = -Infinity
  let most = Infinity
  for (const x of places) {
    const span = spanAt(polygon, x)
    if (span === null) return null
    least = Math.max(least, span.least)
    most = Math.min(most, span.most)
  }
  return least < most ? { least, most } : null
}

/** Whether the point lies inside (even–odd rule). */
export function inside(polygon: readonly Point[], { x, y }: Point): boolean {
  let within = false
  polygon.forEach((a, index) => {
    const b = polygon[(index + 1) % polygon.length]
    if (b === undefined || a.y > y === b.y > y) return
    if (x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)) within = !within
  })
  return within
}

/**
 * The point of a closed line that is nearest to the place; null where none is nearer than `within`. A segment whose box is
 * further away than what was found is passed over: a thousand fasteners ask.
 */
export function nearestOn(corners: readonly Point[], place: Point, within = Infinity): Point | null {
  let nearest: Point | null = null
  let least = within
  let from = corners.at(-1)
  for (const to of corners) {
    if (from !== undefined && mayBeWithin(least, place, from, to)) {
      const point = nearestOnSegment(place, from, to)
      const distance = spanOf(point.x - place.x, point.y - place.y)
      if (distance < least) [nearest, least] = [point, distance]
    }
    from = to
  }
  return nearest
}

function mayBeWithin(reach: number, { x, y }: Point, a: Point, b: Point): boolean {
  return (
    Math.min(a.x, b.x) - x < reach &&
    x - Math.max(a.x, b.x) < reach &&
    Math.min(a.y, b.y) - y < reach &&
    y - Math.max(a.y, b.y) < reach
  )
}
