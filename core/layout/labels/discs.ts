import { inMillimetres } from '../../quantity/index.ts'
import type { EngineSpec, Fastener } from '../../engine/index.ts'
import { distanceTo, spanOf, type Point } from '../../plane/index.ts'
import type { Content } from '../content.ts'
import type { DrawingFacts } from '../facts.ts'
import type { Box } from '../scene/scene.ts'
import { leastCapital, type Sizes } from '../sizes.ts'
import { spread } from './spread.ts'
import { textWidth } from './text-width.ts'
import type { Projection } from '../view.ts'

/** One fastener's symbol on the sheet. In mm. */
export interface Disc extends Point {
  readonly id: string
  readonly number: string
  readonly radius: number
  /** Capitals of the number in it; 0 where it has none. */
  readonly capital: number
  /** The least capitals that can be read. */
  readonly least: number
  /** Radius once it is what to act on, with the capitals that its number then has and the radius of the ring round it. */
  readonly nextRadius: number
  readonly nextCapital: number
  readonly haloRadius: number
  /** How far the corners of a flag's diamond are from the middle. */
  readonly corner: number
}

/** Numbers stay inside this share of a disc's radius, and inside more of it where they could not be read otherwise. */
const inner = 0.79
const innerAtLeast = 0.88
/** Symbols: what is next is larger by so much where its neighbours let it. */
const nextGrowth = { least: 1.2, most: 1.5 } as const
/** Between two discs, and inside a disc round its number, in px. */
const gap = 3
const air = 0.8
/** Rings that only say where a fastener is, in px. */
const ring = { least: 2.5, most: 7 } as const
/** A face with more fasteners than this is not spread: it has no numbers that can be read without a nearer look. */
const mostSpread = 160

/** From the middle of a number to its corners, in capitals. */
function reachOf(number: string): number {
  return Math.hypot(textWidth(number, 1, 'bold'), 1) / 2
}

/** The radius of a disc that holds a number of so high capitals with air round it, in px. */
function radiusFor(reach: number, capital: number): number {
  return (reach * capital + air) / inner
}

/** The least radius of a disc whose number can be read, in px. */
export function leastRadius(number: string): number {
  return leastRadiusFor(reachOf(number))
}

function leastRadiusFor(reach: number): number {
  return (reach * leastCapital + air) / innerAtLeast
}

/** The capitals of a number in a disc, in px. */
function capitalIn(reach: number, radius: number): number {
  const atLeast = Math.min(leastCapital, (radius * innerAtLeast - air) / reach)
  return Math.max((radius * inner - air) / reach, atLeast, 0.1)
}

/** The discs of a face; `crowded` where its numbers do not find room at their fasteners. */
export interface Discs {
  readonly discs: readonly Disc[]
  readonly crowded: boolean
}

export function discsOf(
  spec: EngineSpec,
  fasteners: readonly Fastener[],
  facts: DrawingFacts,
  look: Content['fasteners'],
  on: {
    readonly place: Projection
    readonly px: number
    readonly sizes: Sizes
    readonly bearings: readonly Box[]
  },
): Discs {
  const places = fasteners.map(({ at }) => on.place(inMillimetres(at[0]), inMillimetres(at[1])))
  if (look !== 'numbered')
    return { discs: bareDiscs(spec, fasteners, facts, look, places, on.px), crowded: false }
  return numberedDiscs(fasteners, facts, places, on)
}

export function numberOf({ id, number }: Fastener, facts: DrawingFacts): string {
  return facts.fasteners[id]?.number ?? number
}

/** Rings or holes, as large as the fasteners are, within what can be seen. */
export function bareDiscs(
  spec: EngineSpec,
  fasteners: readonly Fastener[],
  facts: DrawingFacts,
  look: 'rings' | 'holes',
  places: readonly Point[],
  px: number,
): readonly Disc[] {
  const threads = new Map(
    spec.fastenerGroups.map(({ id, thread }) => [id, inMillimetres(thread.diameter) / 2]),
  )
  const away = nearestNeighbours(places)
  return fasteners.map((fastener, index) => {
    const hole = threads.get(fastener.group) ?? 4
    const seen = look === 'holes' ? hole : Math.min(Math.max(hole, ring.least * px), ring.most * px)
    const radius = Math.min(seen, Math.max((away[index]! - px) / 2, px / 2))
    const next = Math.max(radius, Math.min(radius * 1.6, away[index]! - radius - px))
    return {
      ...{
        id: fastener.id,
        number: numberOf(fastener, facts),
        ...places[index]!,
        radius,
        capital: 0,
        least: 0,
      },
      ...{ nextRadius: next, nextCapital: 0, haloRadius: next + 3 * px, corner: next },
    }
  })
}

/**
 * Discs are symbols: as large as their neighbours let them be, up to the size that their numbers ask for, the fasteners of a
 * group alike, and never so small that a number is not read. Fasteners that are too close for that are drawn a little apart.
 */
function numberedDiscs(
  fasteners: readonly Fastener[],
  facts: DrawingFacts,
  places: readonly Point[],
  { px, sizes, bearings }: { readonly px: number; readonly sizes: Sizes; readonly bearings: readonly Box[] },
): Discs {
  const numbers = fasteners.map((fastener) => numberOf(fastener, facts))
  const reach = numbers.map(reachOf)
  const wanted = radiusFor(Math.max(reachOf('0'), ...reach), sizes.number) * px
  const least = reach.map((each) => leastRadiusFor(each) * px)
  const close = nearestNeighbours(places)
  const tight = close.some((away, index) => away < least[index]! * 2 + gap * px)
  const apart = tight && places.length <= mostSpread ? spread(places, least, gap * px) : null
  const crowded = tight && apart === null
  const at = apart ?? places
  const away = apart === null ? close : nearestNeighbours(at)
  const largestLeast = Math.max(0, ...least)
  const own = at.map((place, index) => {
    const room = away[index]! - gap * px
    const floor = crowded ? px / 2 : least[index]!
    const neighbour = Math.max(Math.min(room / 2.25, room - (crowded ? 0 : largestLeast)), floor)
    const bearing = Math.max(distanceToNearest(bearings, place) - 3 * px, floor)
    return Math.max(Math.min(wanted, neighbour, bearing), px / 2)
  })
  const shared = new Map<string, number>()
  for (const group of new Set(fasteners.map((fastener) => fastener.group))) {
    const radii = own.filter((_, index) => fasteners[index]!.group === group).sort((a, b) => a - b)
    shared.set(group, radii[Math.floor(radii.length / 4)] ?? wanted)
  }
  const radii = own.map((radius, index) => {
    const together = shared.get(fasteners[index]!.group) ?? radius
    return Math.min(radius, Math.max(together, Math.min(least[index]!, radius)))
  })
  const capitals = reach.map((each, index) => Math.min(sizes.number, capitalIn(each, radii[index]! / px)))
  const tallest = Math.max(0, ...reach.map((each, index) => each * capitals[index]!)) * px
  const largestRadius = Math.max(0, ...radii)
  return {
    discs: fasteners.map(({ id }, index) => {
      const number = numbers[index]!
      const radius = radii[index]!
      // It may lie over the rims of its neighbours, never over their numbers.
      const free = away[index]! - tallest - gap * px
      const wishedRadius = radiusFor(reach[index]!, sizes.next) * px
      const nextRadius = Math.max(
        radius,
        Math.min(
          Math.max(wishedRadius, radius * nextGrowth.least),
          radius * nextGrowth.most,
          radius + 8 * px,
          free,
        ),
      )
      return {
        ...{ id, number, ...at[index]!, radius, capital: capitals[index]! * px, nextRadius },
        least: leastCapital * px,
        nextCapital: Math.min(sizes.next, capitalIn(reach[index]!, nextRadius / px)) * px,
        haloRadius: Math.max(nextRadius, Math.min(nextRadius + 5 * px, free + 1.5 * px)),
        corner: Math.max(radius, Math.min(radius * 1.25, away[index]! - largestRadius - px)),
      }
    }),
    crowded,
  }
}

/** To the nearest of the boxes that the place is not itself in. */
function distanceToNearest(boxes: readonly Box[], place: Point): number {
  let least = Infinity
  for (const box of boxes) {
    const away = distanceTo(box, place)
    if (away > 0 && away < least) least = away
  }
  return least
}

/** The distance from each place to the nearest other one, looked for to both sides in the order of x. */
function nearestNeighbours(places: readonly Point[]): readonly number[] {
  const inOrder = places.map(({ x, y }, index) => ({ x, y, index })).sort((a, b) => a.x - b.x)
  const nearestDistance = places.map(() => Infinity)
  inOrder.forEach((from, rank) => {
    let least = Infinity
    for (const step of [1, -1]) {
      for (let other = inOrder[rank + step], at = rank; other !== undefined; other = inOrder[at + step]) {
        if (Math.abs(other.x - from.x) >= least) break
        least = Math.min(least, spanOf(other.x - from.x, other.y - from.y))
        at += step
      }
    }
    nearestDistance[from.index] = least
  })
  return nearestDistance
}
