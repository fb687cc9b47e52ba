import type { EndFloat } from '../engine/index.ts'
import { done, refused, type Outcome } from '../problem/index.ts'
import { difference, lengthAmount, type Length } from '../quantity/index.ts'

export type Washer = EndFloat['washers'][number]

/**
 * The end float as it would be with the washers that the table supposes, from the float measured with others:
 * measured − (supposed − fitted), both the sum of all washers (TM 5-4210-233-14&P-2, p. 6-152).
 */
export function correctedFloat(measured: Length, supposed: Length, fitted: Length): Length {
  return difference(measured, difference(supposed, fitted))
}

/**
 * The washers that the spec's table gives for a float. A row holds from its lower to its upper float, both included; on
 * an edge that two rows share it is the lower row, as 'over … up to and including' has it.
 *
 * Refuses `washer-not-defined` for a float in a gap between rows, beside them, or without a table: it is never guessed.
 */
export function washerFor(endFloat: EndFloat, float: Length): Outcome<Washer> {
  const row = endFloat.washers
    .filter(({ floatFrom = Infinity, floatTo = -Infinity }) => float >= floatFrom && float <= floatTo)
    .toSorted((one, other) => (one.floatTo ?? 0) - (other.floatTo ?? 0))[0]
  if (row !== undefined) return done(row)
  return refused('washer-not-defined', { place: endFloat.saddle, float: lengthAmount(float, 'mm') })
}
