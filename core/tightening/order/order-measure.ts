import { problem, type Problem } from '../../problem/index.ts'
import { centreOf, meanOf, ranksOf, type Place } from './pattern-ranks.ts'

/**
 * How an order compares with tightening the middle first and neighbours apart. It measures; it forbids
 * nothing.
 */
export interface OrderMeasure {
  /**
   * Of all pairs that lie at different distances from the middle, the share in which the outer one comes
   * first: 0 for strictly outwards, about half from end to end, 1 for strictly inwards. Null where there is
   * no middle to speak of: on a circle, or with fewer than four.
   */
  readonly inwards: number | null
  /** The longest row of hops that each go to a neighbour on the same side; 0 when there are none. */
  readonly inLine: number
  /** What is unusual about the order, in words; empty for a usual one. */
  readonly remarks: readonly Problem[]
}

/** From where on something is remarked on. Common practice, no source. */
const remarkable = { nearerShare: 1 / 4, inwards: 0.6, inLine: 3 }

/**
 * Measures an order of the fasteners of one joint; `label` is what each place is called on the drawing. Where
 * they hold separate caps, `orderRemarks` measures cap by cap.
 */
export function measureOrder(
  inOrder: readonly Place[],
  label: (place: Place) => string = ({ id }) => id,
): OrderMeasure {
  const inwards = inwardsShare(inOrder)
  const line = longestLine(inOrder)
  const remarks: Problem[] = []
  const [first] = inOrder
  if (first !== undefined && inwards !== null) {
    const ranks = ranksOf(inOrder)
    const nearer = inOrder.filter((place) => ranks.get(place)! < ranks.get(first)!).length
    if (nearer > remarkable.nearerShare * inOrder.length)
      remarks.push(problem('order-begins-outside', { first: label(first), nearer }))
    if (inwards > remarkable.inwards)
      remarks.push(problem('order-goes-inwards', { percent: Math.round(inwards * 100) }))
  }
  if (line !== null && line.hops >= remarkable.inLine)
    remarks.push(
      problem('order-in-line', { hops: line.hops, first: label(line.first), last: label(line.last) }),
    )
  return { inwards, inLine: line?.hops ?? 0, remarks }
}

function inwardsShare(inOrder: readonly Place[]): number | null {
  if (inOrder.length < 4 || onCircle(inOrder)) return null
  const ranks = ranksOf(inOrder)
  let pairs = 0
  let outerFirst = 0
  inOrder.forEach((earlier, index) => {
    for (const later of inOrder.slice(index + 1)) {
      const outwards = ranks.get(later)! - ranks.get(earlier)!
      if (outwards !== 0) pairs += 1
      if (outwards < 0) outerFirst += 1
    }
  })
  return pairs === 0 ? null : outerFirst / pairs
}

/** Within a tenth of its radius. */
function onCircle(places: readonly Place[]): boolean {
  const centre = meanOf(places)
  const radii = places.map(({ x, y }) => Math.hypot(x - centre.x, y - centre.y))
  return Math.min(...radii) >= 0.9 * Math.max(...radii)
}

interface Line {
  readonly hops: number
  readonly first: Place
  readonly last: Place
}

function longestLine(inOrder: readonly Place[]): Line | null {
  const isNeighbour = neighboursOnSide(inOrder)
  let longest: Line | null = null
  let hops = 0
  for (let at = 1; at < inOrder.length; at++) {
    const last = inOrder[at]!
    hops = isNeighbour(inOrder[at - 1]!, last) ? hops + 1 : 0
    if (hops > (longest?.hops ?? 0)) longest = { hops, first: inOrder[at - hops]!, last }
  }
  return longest
}

/** Tells whether two places follow each other along the same side of the longer extent. */
function neighboursOnSide(places: readonly Place[]): (one: Place, other: Place) => boolean {
  const { along, across } = centreOf(places)
  const positions = new Map<Place, readonly [side: number, position: number]>()
  for (const side of [-1, 0, 1])
    places
      .filter((place) => Math.sign(Math.round(across(place))) === side)
      .toSorted((a, b) => along(a) - along(b))
      .forEach((place, position) => positions.set(place, [side, position]))
  return (one, other) => {
    const [side, position] = positions.get(one)!
    const [otherSide, otherPosition] = positions.get(other)!
    return side === otherSide && Math.abs(position - otherPosition) === 1
  }
}
