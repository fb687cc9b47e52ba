import type { Amount } from '../words/index.ts'
import { roundHalfAway } from './rounding.ts'

/** A number with exactly so many decimals, rounded half away from zero, as a fact of a sentence. */
export function fixedAmount(value: number, unit: string, decimals: number): Amount {
  return { amount: roundHalfAway(value, decimals), decimals, isShort: false, unit }
}

/** The same with at most so many: zeros that close the fraction are left off. */
export function shortAmount(value: number, unit: string, decimals: number): Amount {
  return { ...fixedAmount(value, unit, decimals), isShort: true }
}
