import { done, refused, type Outcome } from '../problem/index.ts'
import { asTyped } from './as-typed.ts'

/** A number as it was written, digit by digit, so that it can be scaled without passing through binary. */
export type Decimal = { readonly negative: boolean; readonly whole: string; readonly fraction: string }

const plain = /^([+\-\u2212]?)(\d*)(?:[.,](\d*))?$/
const severalMarks = /^[+\-\u2212]?\d+(?:[.,]\d+){2,}$/
const mostDigits = 30

/** Reads one plain decimal, point or comma. Faults: see `parseNumber`. */
export function readDecimal(typed: string): Outcome<Decimal> {
  const text = typed.trim()
  if (text === '') return refused('number-missing', {})
  if (severalMarks.test(text)) return refused('number-ambiguous', { typed: asTyped(text) })
  const [, sign, whole = '', fraction = ''] = plain.exec(text) ?? []
  const digits = whole.length + fraction.length
  if (digits === 0) return refused('number-unreadable', { typed: asTyped(text) })
  if (digits > mostDigits) return refused('number-out-of-range', { typed: asTyped(text) })
  return done({ negative: sign !== '' && sign !== '+', whole, fraction })
}

/** The nearest binary number; finite, never −0. */
export function numberOf({ negative, whole, fraction }: Decimal): number {
  return Number(`${negative ? '-' : ''}${whole}.${fraction}0`) + 0
}

/** The decimal times a whole factor, exact, then rounded half away from zero to a whole number. */
export function timesWhole({ negative, whole, fraction }: Decimal, factor: bigint): bigint {
  const unit = 10n ** BigInt(fraction.length)
  const rounded = (BigInt(whole + fraction) * factor * 2n + unit) / (unit * 2n)
  return negative ? -rounded : rounded
}

/**
 * A number as a person or a gauge types it: digits, one decimal point or one decimal comma, perhaps a sign; blanks
 * around it are ignored. `12,5` is 12.5, and `62,000` is 62, as on a micrometer: a comma is never a thousands mark.
 *
 * Refuses: `number-missing` (nothing but blanks), `number-ambiguous` (two or more points or commas, `1,234.5`),
 * `number-out-of-range` (over 30 digits), `number-unreadable` (all else, such as exponents, hexadecimal, NaN, a lone sign).
 */
export function parseNumber(typed: string): Outcome<number> {
  const decimal = readDecimal(typed)
  return decimal.ok ? done(numberOf(decimal.value)) : decimal
}

/** As `parseNumber`, for what cannot be below zero: refuses `number-negative` as well. Zero is a reading. */
export function parseReading(typed: string): Outcome<number> {
  const number = parseNumber(typed)
  return number.ok && number.value < 0 ? refused('number-negative', { typed: asTyped(typed) }) : number
}
