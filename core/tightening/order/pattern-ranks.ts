/** Where a fastener is, in mm of the engine's own frame: x from the nose, y across. */
export interface Place {
  readonly id: string
  readonly x: number
  readonly y: number
}

/**
 * The middle of the extents, and how far a place lies from it along the longer extent and across it (x where
 * both are alike).
 */
export interface Centre {
  readonly x: number
  readonly y: number
  readonly along: (place: Place) => number
  readonly across: (place: Place) => number
  /** The longer extent. */
  readonly length: number
}

/** The middle of some places, of which there is one at least. */
export function centreOf(places: readonly Place[]): Centre {
  const span = (values: readonly number[]) => {
    const [least, most] = [Math.min(...values), Math.max(...values)]
    return { middle: (least + most) / 2, length: most - least }
  }
  const [alongX, alongY] = [span(places.map(({ x }) => x)), span(places.map(({ y }) => y))]
  const onX = (place: Place) => place.x - alongX.middle
  const onY = (place: Place) => place.y - alongY.middle
  const lying = alongX.length >= alongY.length
  return {
    x: alongX.middle,
    y: alongY.middle,
    along: lying ? onX : onY,
    across: lying ? onY : onX,
    length: Math.max(alongX.length, alongY.length),
  }
}

/**
 * The rank of each place, 0 for those nearest the middle of the longer extent: how many steps outwards.
 * Places belong to one rank when they differ by no more than half of what they would lie apart, were they
 * spread evenly in one line.
 */
export function ranksOf(places: readonly Place[]): ReadonlyMap<Place, number> {
  const { along, length } = centreOf(places)
  const out = (place: Place) => Math.abs(along(place))
  const alike = length / (2 * places.length)
  const ranks = new Map<Place, number>()
  let rank = -1
  let from = -Infinity
  for (const place of places.toSorted((a, b) => out(a) - out(b))) {
    if (out(place) - from > alike) {
      rank += 1
      from = out(place)
    }
    ranks.set(place, rank)
  }
  return ranks
}

/** The places rank by rank from the middle outwards, in each rank as they came. */
export function byRank(places: readonly Place[]): readonly (readonly Place[])[] {
  const ranks = ranksOf(places)
  const rings: Place[][] = []
  for (const place of places) (rings[ranks.get(place)!] ??= []).push(place)
  return rings
}

/**
 * The mean of some places, of which there is one at least: on an evenly spread circle it is the circle's own
 * middle.
 */
export function meanOf(places: readonly Place[]): { readonly x: number; readonly y: number } {
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length
  return { x: mean(places.map(({ x }) => x)), y: mean(places.map(({ y }) => y)) }
}

/** Degrees clockwise round a centre, from straight up (y) on; 0 up to but not including 360. */
export function around({ x, y }: Place, centre: { readonly x: number; readonly y: number }): number {
  const angle = (Math.atan2(x - centre.x, y - centre.y) * 180) / Math.PI
  return (angle + 360) % 360
}
