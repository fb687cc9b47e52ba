import { done, refused, type Outcome } from '../problem/index.ts'
import { asTyped } from './as-typed.ts'
import { numberOf, readDecimal, type Decimal } from './decimal.ts'

/** The spellings of each unit, in lower case and without blanks, dots, hyphens; the keys are the units as we print them. */
export type Spellings<Unit extends string> = Readonly<Record<Unit, readonly string[]>>

/** A number with its unit, as it was written. */
export type Measure<Unit extends string> = { readonly decimal: Decimal; readonly unit: Unit }

const blank = '[ \\u00a0\\u2009\\u202f]'
/** Whole thousands with a blank between them, as ISO 80000-1 groups digits: `1 234`. */
const grouped = new RegExp(`^([+\\-\\u2212]?\\d{1,3})((?:${blank}\\d{3})+)(?![\\d/])`)
/** `1/2`, `1 1/2`, `1-1/2`: halves down to sixty-fourths, which are exact decimals. */
const fraction = new RegExp(`^(?:(\\d+)(?:${blank}|-))?(\\d{1,2})/(2|4|8|16|32|64)(?!\\d)`)

const numberThenUnit = /^([+\-\u2212]?[\d.,]*)(.*)$/s

/**
 * Splits `2.4409 in` into its number and its unit. A unit that is not written is `unitWhenNone`.
 *
 * Refuses what `parseNumber` refuses, `unit-unknown`, and `unit-missing` when there is neither a unit nor a default.
 */
export function readMeasure<Unit extends string>(
  typed: string,
  spellings: Spellings<Unit>,
  unitWhenNone?: Unit,
): Outcome<Measure<Unit>> {
  const text = typed.trim()
  const [, number = '', rest = ''] = numberThenUnit.exec(plain(text)) ?? []
  if (text !== '' && number === '') return refused('number-unreadable', { typed: asTyped(text) })
  const decimal = readDecimal(number)
  if (!decimal.ok) return decimal

  const isWritten = plainUnit(rest) !== ''
  const unit = isWritten ? unitNamed(rest, spellings) : unitWhenNone
  if (unit !== undefined) return done({ decimal: decimal.value, unit })
  const units = Object.keys(spellings)
  return refused(isWritten ? 'unit-unknown' : 'unit-missing', { typed: asTyped(text), units })
}

/** The unit that a text names, in any of its spellings. */
export function unitNamed<Unit extends string>(name: string, spellings: Spellings<Unit>): Unit | undefined {
  const units = Object.keys(spellings) as Unit[]
  return units.find((each) => spellings[each].includes(plainUnit(name)))
}

function plainUnit(name: string): string {
  return name.toLowerCase().replace(/[\s.·⋅•\u2219*×\-\u2010\u2011\u2013]/g, '')
}

/** Groups of digits and fractions as the plain decimal that they are. */
function plain(text: string): string {
  const joined = text.replace(grouped, (_, first: string, rest: string) => first + rest.replace(/\D/g, ''))
  return joined.replace(fraction, (_, whole: string | undefined, over: string, under: string) =>
    String(Number(whole ?? 0) + Number(over) / Number(under)),
  )
}

/** As `readMeasure`, with the number in binary, for sizes that cannot be below zero: refuses `number-negative` as well. */
export function readAmount<Unit extends string>(
  typed: string,
  spellings: Spellings<Unit>,
  unitWhenNone?: Unit,
): Outcome<{ readonly amount: number; readonly unit: Unit }> {
  const measure = readMeasure(typed, spellings, unitWhenNone)
  if (!measure.ok) return measure
  const amount = numberOf(measure.value.decimal)
  if (amount < 0) return refused('number-negative', { typed: asTyped(typed) })
  return done({ amount, unit: measure.value.unit })
}

const bareNumber = /^\s*[+\-\u2212]?[\d.,]*\s*$/

/** What was typed, as it was typed, with the unit of the scale or gauge where none was typed along. */
export function withUnit(typed: string, unit: string): string {
  if (!bareNumber.test(typed)) return typed.trim()
  return unit === '°' ? `${typed.trim()}°` : `${typed.trim()} ${unit}`
}
