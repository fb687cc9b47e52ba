import { done, refused, type Outcome } from '../problem/index.ts'
import type { Amount } from '../words/index.ts'
import { asTyped } from './as-typed.ts'
import { fixedAmount, shortAmount } from './amount.ts'
import type { Quantity } from './brand.ts'
import { timesWhole } from './decimal.ts'
import { readMeasure, type Spellings } from './measure.ts'
import { roundHalfAway } from './rounding.ts'

/**
 * A length in whole nanometres, of either sign. Both 0.001 mm (1 000) and 0.0001 in (2 540) are whole, so that a reading
 * on the edge of a band falls on the right side of it.
 */
export type Length = Quantity<'length'>

export const lengthUnits = ['mm', 'in', 'µm', 'thou'] as const
export type LengthUnit = (typeof lengthUnits)[number]

/** Nanometres in one unit, exact: 1 in = 25.4 mm (NIST SP 811, appendix B.8); 1 thou = 0.001 in. */
const nanometresIn: Readonly<Record<LengthUnit, number>> = {
  mm: 1_000_000,
  in: 25_400_000,
  µm: 1_000,
  thou: 25_400,
}

export const lengthSpellings: Spellings<LengthUnit> = {
  mm: ['mm'],
  in: ['in', 'inch', 'inches', '"', '″', '”', "''"],
  // The micro sign and the Greek mu look alike and are two characters.
  µm: ['\u00b5m', '\u03bcm', 'um', 'micron', 'microns'],
  thou: ['thou'],
}

const usualDecimals: Readonly<Record<LengthUnit, number>> = { mm: 3, in: 4, µm: 0, thou: 1 }

/** Throws a RangeError unless `n` is a whole number that binary holds exactly (±9 007 km). */
export function nanometres(n: number): Length {
  if (!Number.isSafeInteger(n))
    throw new RangeError(`a length must be a whole number of nanometres, not ${n}`)
  return (n + 0) as Length
}

/** Millimetres, rounded half away from zero to the nearest nanometre. Throws a RangeError as `nanometres` does. */
export function millimetres(mm: number): Length {
  return lengthOf(mm, 'mm')
}

/** A number in a unit, rounded half away from zero to the nearest nanometre. Throws a RangeError as `nanometres` does. */
export function lengthOf(value: number, unit: LengthUnit): Length {
  return nanometres(roundHalfAway(value * nanometresIn[unit]))
}

/** The length in a unit, to the nearest binary number: 61 998 860 nm is 2.4409 in. */
export function lengthIn(length: Length, unit: LengthUnit): number {
  return length / nanometresIn[unit]
}

export function inMillimetres(length: Length): number {
  return lengthIn(length, 'mm')
}

export function inMicrometres(length: Length): number {
  return lengthIn(length, 'µm')
}

/** The sum, exact; zero for none. Throws a RangeError past the range of a length. */
export function sum(...lengths: readonly Length[]): Length {
  return nanometres(lengths.reduce((total: number, each) => total + each, 0))
}

/** `a` less `b`, exact. Throws a RangeError past the range of a length. */
export function difference(a: Length, b: Length): Length {
  return nanometres(a - b)
}

/** Half the length: a radius from a diameter, or the share of an undersize that each wall takes. An odd nanometre rounds away from zero. */
export function half(length: Length): Length {
  return nanometres(roundHalfAway(length / 2))
}

/**
 * A length as it is typed, by exact decimal arithmetic: `2.4409 in` is 61 998 860 nm. Rounded half away from zero where
 * the digits go below a nanometre. May be negative. `unitWhenNone` is the unit of a bare number.
 *
 * Refuses what `parseNumber` refuses, `number-out-of-range` past the range of a length, `unit-unknown`, `unit-missing`.
 */
export function parseLength(typed: string, unitWhenNone?: LengthUnit): Outcome<Length> {
  const measure = readMeasure(typed, lengthSpellings, unitWhenNone)
  if (!measure.ok) return measure
  const exact = Number(timesWhole(measure.value.decimal, BigInt(nanometresIn[measure.value.unit])))
  return Number.isSafeInteger(exact)
    ? done(nanometres(exact))
    : refused('number-out-of-range', { typed: asTyped(typed) })
}

/**
 * The length in a unit as a fact of a sentence. Decimals unless given: mm 3, in 4, µm 0, thou 1, zeros kept so that sizes line up
 * in a column.
 */
export function lengthAmount(length: Length, unit: LengthUnit, decimals = usualDecimals[unit]): Amount {
  return fixedAmount(lengthIn(length, unit), unit, decimals)
}

/** The same with at most so many decimals: zeros that close the fraction are left off. */
export function shortLengthAmount(length: Length, unit: LengthUnit, decimals = usualDecimals[unit]): Amount {
  return shortAmount(lengthIn(length, unit), unit, decimals)
}
