import type { EndFloat } from '../engine/index.ts'
import { done, refused, type Outcome } from '../problem/index.ts'
import { difference, half, lengthAmount, sum, type Length } from '../quantity/index.ts'
import type { Washer } from './end-float.ts'

/** The two thrust washers of a crank, one on each side of its saddle, and the end float that they leave. */
export interface ThrustPair {
  readonly first: Washer
  readonly second: Washer
  readonly float: Length
}

/** Washers that are in while the float is measured; none where the gap itself is. */
export type FittedWashers = readonly Washer[]

/** The gap for both washers: the end float that was measured, and the washers that it was measured with. */
function gapForWashers(measured: Length, fitted: FittedWashers): Length {
  return sum(measured, ...fitted.map(({ thickness }) => thickness))
}

/**
 * The pair of the spec's washers that leaves an end float within its limits, limits included, and nearest to their middle; of two as
 * near, the larger float, which oil fills and heat takes up. Both are alike unless the spec says that they may differ. Those that
 * are fitted stay where the float is within with them.
 *
 * Refuses `no-thrust-pair` where no pair leaves such a float: it names the nearest and what that would leave.
 */
export function thrustPairFor(
  endFloat: EndFloat,
  measured: Length,
  fitted: FittedWashers,
): Outcome<ThrustPair> {
  const isWithin = (float: Length) => float >= endFloat.least && float <= endFloat.most
  const [first, second] = fitted
  if (first !== undefined && second !== undefined && isWithin(measured))
    return done({ first, second, float: measured })
  const gap = gapForWashers(measured, fitted)
  const middle = half(sum(endFloat.least, endFloat.most))
  const off = ({ float }: ThrustPair) => Math.abs(float - middle)
  const pairs = thrustPairs(endFloat)
    .map((pair) => ({
      ...pair,
      float: difference(gap, sum(pair.first.thickness, pair.second.thickness)),
    }))
    .toSorted((one, other) => off(one) - off(other) || other.float - one.float)
  const fittingPair = pairs.find(({ float }) => isWithin(float))
  if (fittingPair !== undefined) return done(fittingPair)
  const [nearest] = pairs
  return refused('no-thrust-pair', {
    place: endFloat.saddle,
    gap: lengthAmount(gap, 'mm'),
    nearest:
      nearest === undefined
        ? null
        : {
            first: nearest.first.name.text,
            second: nearest.second.name.text,
            float: lengthAmount(nearest.float, 'mm'),
          },
    least: lengthAmount(endFloat.least, 'mm'),
    most: lengthAmount(endFloat.most, 'mm'),
  })
}

/** Every two washers that may be fitted together, each two once. */
export function thrustPairs({
  washers,
  mixed,
}: Pick<EndFloat, 'washers' | 'mixed'>): readonly Pick<ThrustPair, 'first' | 'second'>[] {
  return washers.flatMap((first, index) =>
    (mixed === true ? washers.slice(index) : [first]).map((second) => ({ first, second })),
  )
}

/** Whether the spec gives its washers by thickness alone, and no table of which float asks for which. */
export function isByThickness({ washers }: EndFloat): boolean {
  return washers.length > 0 && washers.every(({ floatFrom }) => floatFrom === undefined)
}

/** Those of a pair that are not in yet, each with how many: what has to be there before it can be fitted. */
export function washersToGet(
  { first, second }: Pick<ThrustPair, 'first' | 'second'>,
  fitted: FittedWashers,
): readonly { readonly washer: Washer; readonly count: number }[] {
  const there = fitted.map(({ name }) => name)
  const missing = [first, second].filter(({ name }) => {
    const at = there.indexOf(name)
    if (at < 0) return true
    there.splice(at, 1)
    return false
  })
  return [...new Set(missing)].map((washer) => ({
    washer,
    count: missing.filter((each) => each === washer).length,
  }))
}
