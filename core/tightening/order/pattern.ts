import type { Order } from '../../engine/index.ts'
import { around, byRank, centreOf, meanOf, type Place } from './pattern-ranks.ts'

export type PatternName = NonNullable<Order['pattern']>

const patterns: Readonly<Record<PatternName, (places: readonly Place[]) => readonly Place[]>> = {
  'centre-out': centreOut,
  spiral,
  crosswise,
  'end-to-end': endToEnd,
}

/**
 * An order grown by a named pattern, as the ids of all the places, each once. The same places give the same
 * order, whatever order they come in; their ids only tell two apart that lie on one spot.
 *
 * - `centre-out`: from the middle of the longer extent outwards, in each rank to the one furthest from the
 *   last.
 * - `spiral`: from the middle outwards, each rank once round clockwise from where the last one ended.
 * - `crosswise`: for places on a circle; each to the one across, and then half way between what is pulled.
 * - `end-to-end`: from one end of the longer extent to the other, the nose first.
 */
export function orderBy(pattern: PatternName, places: readonly Place[]): readonly string[] {
  const sorted = places.toSorted((a, b) => a.x - b.x || b.y - a.y || (a.id < b.id ? -1 : 1))
  return patterns[pattern](sorted).map(({ id }) => id)
}

function centreOut(places: readonly Place[]): readonly Place[] {
  const order: Place[] = []
  for (const rank of byRank(places)) {
    const left = [...rank]
    while (left.length > 0) {
      const last = order.at(-1) ?? centreOf(places)
      const next = furthestPlace(left, last)
      order.push(...left.splice(left.indexOf(next), 1))
    }
  }
  return order
}

/** The first of the furthest; a thousandth of a millimetre is no difference. */
function furthestPlace(places: readonly Place[], from: { readonly x: number; readonly y: number }): Place {
  const distance = ({ x, y }: Place) => Math.hypot(x - from.x, y - from.y)
  return places.reduce((best, each) => (distance(each) > distance(best) + 1e-3 ? each : best))
}

function spiral(places: readonly Place[]): readonly Place[] {
  const centre = centreOf(places)
  const order: Place[] = []
  for (const rank of byRank(places)) {
    const last = order.at(-1)
    const from = last === undefined ? 0 : around(last, centre)
    const onwards = (place: Place) => (around(place, centre) - from + 360) % 360
    order.push(...rank.toSorted((a, b) => onwards(a) - onwards(b)))
  }
  return order
}

function endToEnd(places: readonly Place[]): readonly Place[] {
  const { along, across } = centreOf(places)
  return places.toSorted((a, b) => along(a) - along(b) || across(b) - across(a))
}

function crosswise(places: readonly Place[]): readonly Place[] {
  const count = places.length
  if (count === 0) return []
  const middle = meanOf(places)
  const ring = places.toSorted((a, b) => around(a, middle) - around(b, middle))
  const positions = count % 2 === 0 ? evenCross(count) : oddCross(count)
  return positions.map((position) => ring[position]!)
}

/** With an odd number none is opposite: nearly half way round each time meets all of them. */
function oddCross(count: number): readonly number[] {
  return Array.from({ length: count }, (_, step) => (step * ((count - 1) / 2)) % count)
}

/**
 * Opposite pairs, the second a quarter turn from the first as near as the count allows, each one after that as far as can be
 * from all before, and of those equally far the one furthest from the last (the order of ASME PCC-1's table for its legacy
 * pattern). Each pair is begun at the end further from the last one pulled.
 */
function evenCross(count: number): readonly number[] {
  const half = count / 2
  const apart = (a: number, b: number, of: number) => Math.min((a - b + of) % of, (b - a + of) % of)
  const pairs = [0]
  while (pairs.length < half) {
    const last = pairs.at(-1)!
    const left = Array.from({ length: half }, (_, pair) => pair).filter((pair) => !pairs.includes(pair))
    const room = (pair: number) => Math.min(...pairs.map((each) => apart(pair, each, half)))
    const fromLast = (pair: number) => apart(pair, last, half)
    pairs.push(left.toSorted((a, b) => room(b) - room(a) || fromLast(b) - fromLast(a) || a - b)[0]!)
  }
  const order: number[] = []
  for (const pair of pairs) {
    const last = order.at(-1)
    const other = last !== undefined && apart(pair + half, last, count) > apart(pair, last, count)
    order.push(...(other ? [pair + half, pair] : [pair, pair + half]))
  }
  return order
}
