import { inMillimetres } from '../quantity/index.ts'
import { distanceTo, type Point } from './box.ts'
import type { DrawingFacts } from './facts.ts'
import type { OnFace } from './on-face.ts'
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
  /** Radius once it is the next one. */
  readonly nextRadius: number
  readonly reach: number
}

/** A tick or an exclamation mark on the rim, and the corners of a flag's diamond, reach this far beyond the radius. */
export const rimReach = 1.34
/** The halo of the next one reaches this far beyond its radius, its line included. */
export const haloReach = 1.2
/** The share of the radius that is left for the number inside the ring of passes. */
export const inner = 0.76
/** The next one is larger by this, where there is room. */
const nextGrowth = 1.6

/**
 * The discs of a face. They have the size that their numbers ask for, and shrink where a neighbour or a bearing is too
 * near, so that no two ever meet: each takes less than half the way to its nearest neighbour. The fasteners of a group
 * keep to one size, that of its closer quarter; only fasteners closer still are smaller by themselves. `bearings` are what
 * they keep clear of, `zones` what the next one does not grow over.
 */
export function discsOf(
  here: OnFace,
  facts: DrawingFacts,
  place: Projection,
  sizes: Sizes,
  bearings: readonly Box[],
  zones: readonly Box[],
): readonly Disc[] {
  const fasteners = here.fasteners.map((fastener) => ({
    fastener,
    number: facts.fasteners[fastener.id]?.number ?? fastener.number,
    at: place(inMillimetres(fastener.at[0]), inMillimetres(fastener.at[1])),
  }))
  const wanted = Math.max(0, ...fasteners.map(({ number }) => radiusFor(number, sizes.number, sizes)))
  const away = nearestNeighbours(fasteners.map(({ at }) => at))
  const toBearing = fasteners.map(({ at }) => distanceToNearest(bearings, at) - 4 * sizes.px)
  const own = fasteners.map((_, index) => {
    const neighbour = (away[index] ?? Infinity) / (2 * rimReach + 0.06)
    const room = Math.min(neighbour, (toBearing[index] ?? Infinity) / rimReach)
    return Math.max(Math.min(wanted, room), sizes.px / 2)
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
    const neighbour = (away[index] ?? Infinity) - rimReach * largest - 2 * sizes.px
    const room = Math.min(neighbour, toBearing[index] ?? Infinity, distanceToNearest(zones, at)) / haloReach
    const nextRadius = Math.max(radius, Math.min(radius * nextGrowth, room))
    return {
      id: fastener.id,
      number,
      ...at,
      radius,
      capital: (sizes.number * radius) / wanted,
      nextRadius,
      reach: Math.max(rimReach * radius, haloReach * nextRadius),
    }
  })
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

/** A disc whose inside holds the number with a little air. */
function radiusFor(number: string, capital: number, sizes: Sizes): number {
  return (Math.hypot(textWidth(number, capital, 'bold') / 2, capital / 2) + 1.5 * sizes.px) / inner
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
        least = Math.min(least, Math.hypot(other.x - from.x, other.y - from.y))
        at += step
      }
    }
    nearest[from.index] = least
  })
  return nearest
}
