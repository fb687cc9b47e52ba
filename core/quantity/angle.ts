import { done, type Outcome } from '../problem/index.ts'
import type { Amount } from '../words/index.ts'
import { shortAmount } from './amount.ts'
import { finite, type Quantity } from './brand.ts'
import { readAmount, type Spellings } from './measure.ts'

/** An angle in degrees; a full turn is 360, and more than one turn is more. */
export type Angle = Quantity<'angle'>

export const angleSpellings: Spellings<'°'> = { '°': ['°', 'º', '\u02da', 'deg', 'degree', 'degrees'] }

/** Throws a RangeError unless the number is finite. */
export function degrees(n: number): Angle {
  return finite(n) as Angle
}

/**
 * An angle as it is typed: `90°`, `90 °`, `90 deg`, or `90`, since there is no other unit to mistake it for.
 *
 * Refuses what `parseNumber` refuses, `number-negative`, `unit-unknown`.
 */
export function parseAngle(typed: string): Outcome<Angle> {
  const read = readAmount(typed, angleSpellings, '°')
  return read.ok ? done(degrees(read.value.amount)) : read
}

/** The angle as a fact of a sentence, with at most 1 decimal unless given. */
export function angleAmount(angle: Angle, decimals = 1): Amount {
  return shortAmount(angle, '°', decimals)
}
