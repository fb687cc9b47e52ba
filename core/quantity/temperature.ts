import { done, refused, type Outcome } from '../problem/index.ts'
import type { Amount } from '../words/index.ts'
import { asTyped } from './as-typed.ts'
import { shortAmount } from './amount.ts'
import { finite, type Quantity } from './brand.ts'
import { numberOf } from './decimal.ts'
import { readMeasure } from './measure.ts'

/** A temperature in degrees Celsius, not below absolute zero. */
export type Temperature = Quantity<'temperature'>

const absoluteZero = -273.15

/** Throws a RangeError unless the number is finite and −273.15 or above. */
export function celsius(n: number): Temperature {
  if (n < absoluteZero) throw new RangeError(`${n} °C is below absolute zero`)
  return finite(n) as Temperature
}

/**
 * A temperature as it is typed, `100 °C` or `212 °F` (t/°C = (t/°F − 32)/1.8, NIST SP 811, appendix B.8). May be negative.
 *
 * Refuses what `parseNumber` refuses, `number-out-of-range` below absolute zero, `unit-unknown`, `unit-missing`.
 */
export function parseTemperature(typed: string): Outcome<Temperature> {
  const read = readMeasure(typed, {
    '°C': ['°c', 'ºc', '\u02dac', '\u2103', 'c', 'degc'],
    '°F': ['°f', 'ºf', '\u02daf', '\u2109', 'f', 'degf'],
  })
  if (!read.ok) return read
  const number = numberOf(read.value.decimal)
  const inCelsius = read.value.unit === '°C' ? number : (number - 32) / 1.8
  return inCelsius < absoluteZero
    ? refused('number-out-of-range', { typed: asTyped(typed) })
    : done(celsius(inCelsius))
}

/** The temperature as a fact of a sentence, with at most 1 decimal unless given. */
export function temperatureAmount(temperature: Temperature, decimals = 1): Amount {
  return shortAmount(temperature, '°C', decimals)
}
