import { refused, type Outcome } from '../problem/index.ts'
import type { Amount } from '../words/index.ts'
import { shortAmount } from './amount.ts'

const inBrackets = /^([^()]+)\(([^()]+)\)\s*$/
const numberAndUnit = /^\s*([+\-\u2212]?[\d.,\s/]*\d)(.*)$/s
/** Left to binary rounding, as a share of the value. */
const slack = 1e-9

/**
 * A value that a manual prints in two units, `0.00475 in (0.121 mm)`: the first is the value, the one in brackets must agree with
 * it as far as both are rounded, half of the last digit of each. A value without brackets is parsed as it is.
 *
 * Refuses what `parse` refuses of either, and `units-disagree`.
 */
export function readBoth<Value extends number>(
  typed: string,
  parse: (typed: string) => Outcome<Value>,
): Outcome<Value> {
  const [, first, second] = inBrackets.exec(typed) ?? []
  if (first === undefined || second === undefined) return parse(typed)
  const value = parse(first)
  if (!value.ok) return value
  const other = parse(second)
  if (!other.ok) return other
  const room = halfDigit(first, parse) + halfDigit(second, parse)
  if (Math.abs(value.value - other.value) <= room + slack * Math.abs(value.value)) return value
  return refused('units-disagree', {
    first: first.trim(),
    second: second.trim(),
    is: inUnitOf(second, value.value, parse),
  })
}

/** Half of the last digit as it is written, in what the value is kept in; nothing for a fraction, which is exact. */
function halfDigit<Value extends number>(typed: string, parse: (typed: string) => Outcome<Value>): number {
  const [, number = '', unit = ''] = numberAndUnit.exec(typed) ?? []
  if (number.includes('/')) return 0
  const [smaller, larger] = [
    parse(number + unit),
    parse(`${number}${/[.,]/.test(number) ? '5' : '.5'}${unit}`),
  ]
  return smaller.ok && larger.ok ? Math.abs(larger.value - smaller.value) : 0
}

/** A value in the unit that another one is written in, to two digits more than that one has. */
function inUnitOf<Value extends number>(
  typed: string,
  value: Value,
  parse: (typed: string) => Outcome<Value>,
): Amount {
  const [, number = '', unit = ''] = numberAndUnit.exec(typed) ?? []
  const [none, one] = [parse(`0${unit}`), parse(`1${unit}`)]
  if (!none.ok || !one.ok) throw new Error(`“${typed}” was read before`)
  const decimals = (number.split(/[.,]/)[1]?.length ?? 0) + 2
  return shortAmount((value - none.value) / (one.value - none.value), unit.trim(), decimals)
}
