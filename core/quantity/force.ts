import { done, type Outcome } from '../problem/index.ts'
import type { Amount } from '../words/index.ts'
import { fixedAmount } from './amount.ts'
import { finite, type Quantity } from './brand.ts'
import { readAmount } from './measure.ts'

/** A force in newtons. */
export type Force = Quantity<'force'>

/**
 * Newtons in one unit: 1 lbf = 0.453 592 37 kg × 9.806 65 m/s², 1 kgf = 9.806 65 N, exact (NIST SP 811, appendix B.8). A spring
 * balance that is marked in kg shows kgf.
 */
const newtonsIn = { N: 1, kN: 1000, lbf: 4.4482216152605, kip: 4448.2216152605, kgf: 9.80665 } as const

const spellings = {
  N: ['n'],
  kN: ['kn'],
  lbf: ['lbf', 'lb', 'lbs'],
  kip: ['kip', 'kips', 'klbf'],
  kgf: ['kgf', 'kg', 'kp'],
} as const

/** Throws a RangeError unless the number is finite. */
export function newtons(n: number): Force {
  return finite(n) as Force
}

/**
 * A force as it is typed, in N, kN, lbf, kip or kgf.
 *
 * Refuses what `parseNumber` refuses, `number-negative`, `unit-unknown`, `unit-missing`.
 */
export function parseForce(typed: string): Outcome<Force> {
  const read = readAmount(typed, spellings)
  return read.ok ? done(newtons(read.value.amount * newtonsIn[read.value.unit])) : read
}

/** The force as a fact of a sentence, in kN with 1 decimal unless given. */
export function forceAmount(force: Force, decimals = 1): Amount {
  return fixedAmount(force / newtonsIn.kN, 'kN', decimals)
}
