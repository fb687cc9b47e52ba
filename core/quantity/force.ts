import { done, type Outcome } from '../problem/index.ts'
import type { Amount } from '../words/index.ts'
import { fixedAmount } from './amount.ts'
import { finite, type Quantity } from './brand.ts'
import { readAmount } from './measure.ts'

/** A force in newtons. */
export type Force = Quantity<'force'>

/** Newtons in one unit: 1 lbf = 0.453 592 37 kg × 9.806 65 m/s², exact (NIST SP 811, appendix B.8). */
const newtonsIn = { N: 1, kN: 1000, lbf: 4.4482216152605, kip: 4448.2216152605 } as const

/** Throws a RangeError unless the number is finite. */
export function newtons(n: number): Force {
  return finite(n) as Force
}

/**
 * A force as it is typed, in N, kN, lbf or kip.
 *
 * Refuses what `parseNumber` refuses, `number-negative`, `unit-unknown`, `unit-missing`.
 */
export function parseForce(typed: string): Outcome<Force> {
  const read = readAmount(typed, { N: ['n'], kN: ['kn'], lbf: ['lbf'], kip: ['kip', 'kips', 'klbf'] })
  return read.ok ? done(newtons(read.value.amount * newtonsIn[read.value.unit])) : read
}

/** The force as a fact of a sentence, in kN with 1 decimal unless told otherwise. */
export function forceAmount(force: Force, decimals = 1): Amount {
  return fixedAmount(force / newtonsIn.kN, 'kN', decimals)
}
