import { inMillimetres } from '../quantity/index.ts'
import { distanceTo, spanOf, type Point } from './box.ts'
import type { DrawingFacts } from './facts.ts'
import type { OnFace } from './on-face.ts'
import { inside, nearestOn } from './polygon.ts'
import type { Box } from './scene.ts'
import type { Sizes } from './sizes.ts'
import { textWidth } from './text-width.ts'
import type { Projection } from './view.ts'

/** One fastener's disc on the sheet. Whatever its state becomes, all that is drawn of it stays within `reach`. */
export interface Disc extends Point {
  readonly id: string
  readonly number: string
  readonly radius: number
  /** Capitals of the number in it. */
  readonly capital: number
  /** Radius once it is the next one, with the capitals that its number then has and the radius of the halo round it. */
  readonly nextRadius: number
  readonly nextCapital: number
  readonly haloRadius: number
  /** How far the corners of a flag's diamond are from the middle. */
  readonly corner: number
  /** The quarter of the rim that carries the badge. */
  readonly badge: Point
  readonly reach: number
  /** The nearest point of the face's edge; null where that is far away, or the fastener does not stand inside it. */
  readonly edge: Point | null
}

/** What discs stay clear of. All on the sheet. */
export interface Surroundings {
  readonly bearings: readonly Box[]
  /** What the next one does not grow over. */
  readonly zones: readonly Box[]
  /** The edge of the face, closed: no disc that stands inside crosses it. */
  readonly edge: readonly Point[]
}

/** A tick or an exclamation mark on the rim, and the corners of a flag's diamond, reach this far beyond the radius. */
export const rimReach = 1.34
export const badgeRadius = 0.4
/** The halo of the next one reaches this far beyond its radius, its line included. */
export const haloReach = 1.2
/** The next one is larger by no more than this, so that little room is kept for it round every disc. */
const nextGrowth = 1.3
/** The share of the radius that is left for the number inside the ring of passes. */
export const inner = 0.8
/** What lies between a disc and the edge of the face with the lines of both, and what its lines take of that, in px. */
const fromEdge = 2.5
const ofLines = 1
/** A disc that is too near to the edge, or on it, is no smaller for that than this, in px: it must be seen. */
const least = 5

/**
 * The discs of a face. They have the size that their numbers ask for, and shrink where a neighbour, a bearing or the edge
 * of the face is too near, so that no two ever meet and none crosses the edge: each takes less than half the way to its
 * nearest neighbour. The fasteners of a group keep to one size, that of its closer quarter; only fasteners closer still
 * are smaller by themselves.
 */
export function discsOf(
  here: OnFace,
  facts: DrawingFacts,
  place: Projection,
  sizes: Sizes,
  { bearings, zones, edge }: Surroundings,
): readonly Disc[] {
  const { px } = sizes
  const fasteners = here.fasteners.map((fastener) => ({
    fastener,
    number: facts.fasteners[fastener.id]?.number ?? fastener.number,
    at: place(inMillimetres(fastener.at[0]), inMillimetres(fastener.at[1])),
  }))
  const reaches = fasteners.map(({ number }) => reachOf(number))
  const wanted = reaches.length === 0 ? 0 : radiusFor(Math.max(...reaches), sizes.number, sizes)
  const away = nearestNeighbours(fasteners.map(({ at }) => at))
  const toBearing = fasteners.map(({ at }) => distanceToNearest(bearings, at) - 4 * px)
  // Further away, the edge takes no room from the largest disc.
  const matters = wanted * rimReach * nextGrowth + 4 * px
  const onEdge = fasteners.map(({ at }) => {
    const nearest = nearestOn(edge, at, matters)
    return nearest !== null && inside(edge, at) ? nearest : null
  })
  const toEdge = fasteners.map(({ at }, index) => distanceBetween(at, onEdge[index] ?? null))
  const own = fasteners.map((_, index) => {
    const neighbour = (away[index] ?? Infinity) / (2 * rimReach + 0.06)
    const room = Math.min(neighbour, (toBearing[index] ?? Infinity) / rimReach)
    const inEdge = Math.max((toEdge[index] ?? Infinity) - fromEdge * px, least * px)
    return Math.max(Math.min(wanted, room, inEdge), px / 2)
  })
  const shared = new Map<string, number>()
  for (const group of new Set(here.fasteners.map((fastener) => fastener.group))) {
    const radii = own.filter((_, index) => fasteners[index]?.fastener.group === group).sort((a, b) => a - b)
    shared.set(group, radii[Math.floor(radii.length / 4)] ?? wanted)
  }
  const radii = own.map((radius, index) =>
    Math.min(radius, shared.get(fasteners[index]?.fastener.group ?? '') ?? radius),
  )
  const largest = Math.max(...radii)
  return fasteners.map(({ fastener, number, at }, index) => {
    const radius = radii[index] ?? wanted
    const inEdge = (toEdge[index] ?? Infinity) - ofLines * px
    const neighbour = (away[index] ?? Infinity) - rimReach * largest - 2 * px
    const room = Math.min(neighbour, toBearing[index] ?? Infinity, distanceToNearest(zones, at)) / haloReach
    const asked = radiusFor(reaches[index] ?? 0, sizes.next, sizes)
    const nextRadius = Math.max(radius, Math.min(asked, radius * nextGrowth, room, inEdge - 3 * px))
    const haloRadius = Math.max(Math.min(nextRadius * (haloReach - 0.04), inEdge), nextRadius)
    const corner = Math.max(Math.min(radius * rimReach, inEdge), radius)
    return {
      id: fastener.id,
      number,
      ...at,
      radius,
      capital: (sizes.number * radius) / wanted,
      nextRadius,
      nextCapital: (sizes.next * nextRadius) / asked,
      haloRadius,
      corner,
      badge: badgeSide(edge, at, radius, inEdge),
      reach: Math.max(rimReach * radius, haloReach * nextRadius),
      edge: onEdge[index] ?? null,
    }
  })
}

/** Up and to the right, or the first other quarter in which the badge does not cross the edge. */
const quarters: readonly Point[] = [
  { x: 1, y: -1 },
  { x: 1, y: 1 },
  { x: -1, y: -1 },
  { x: -1, y: 1 },
]
const upRight: Point = { x: 1, y: -1 }

function badgeSide(edge: readonly Point[], { x, y }: Point, radius: number, inEdge: number): Point {
  if (rimReach * radius <= inEdge) return upRight
  const away = (rimReach - badgeRadius) * radius * Math.SQRT1_2
  const free = quarters.find((side) => {
    const middle = { x: x + side.x * away, y: y + side.y * away }
    return inside(edge, middle) && distanceBetween(middle, nearestOn(edge, middle)) > badgeRadius * radius
  })
  return free ?? upRight
}

function distanceBetween(place: Point, other: Point | null): number {
  return other === null ? Infinity : spanOf(other.x - place.x, other.y - place.y)
}

/** To the nearest of the boxes that the place is not itself in. */
function distanceToNearest(boxes: readonly Box[], place: Point): number {
  let least = Infinity
  for (const box of boxes) {
    const gap = distanceTo(box, place)
    if (gap > 0 && gap < least) least = gap
  }
  return least
}

/** From the middle of a number to its corners, in capitals. */
function reachOf(number: string): number {
  return Math.hypot(textWidth(number, 1, 'bold'), 1) / 2
}

/** A disc whose inside holds the number with a little air. */
function radiusFor(reach: number, capital: number, { px }: Sizes): number {
  return (reach * capital + px) / inner
}

/** The distance from each place to the nearest other one, looked for to both sides in the order of x. */
function nearestNeighbours(places: readonly Point[]): readonly number[] {
  const inOrder = places.map(({ x, y }, index) => ({ x, y, index })).sort((a, b) => a.x - b.x)
  const nearest = places.map(() => Infinity)
  inOrder.forEach((from, rank) => {
    let least = Infinity
    for (const step of [1, -1]) {
      for (let other = inOrder[rank + step], at = rank; other !== undefined; other = inOrder[at + step]) {
        if (Math.abs(other.x - from.x) >= least) break
        least = Math.min(least, spanOf(other.x - from.x, other.y - from.y))
        at += step
      }
    }
    nearest[from.index] = least
  })
  return nearest
}
