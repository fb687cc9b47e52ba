import { refused, type Outcome } from '../../problem/index.ts'
import { lengthAmount, lengthUnits, parseLength, type Length, type LengthUnit } from '../../quantity/index.ts'
import type { Range } from '../clearance.ts'

/** Where a reading is taken, and about what it will be. */
export interface ExpectedReading {
  /** The saddle, rod or bearing. */
  readonly place: string
  /** For example `bore`. */
  readonly what: 'bore' | 'journal' | 'wall'
  readonly between: Range
}

/**
 * One size as it is typed off a gauge, in the unit of the gauge unless another is typed with it: above zero and about as
 * large as expected.
 *
 * Refuses what `parseLength` refuses and `size-not-above-zero`. A size that is far from the expected one is not taken:
 * `reading-in-other-unit` asks whether it was meant in the unit in which it would fit, `reading-far-off` asks for a
 * second look.
 */
export function readSize(typed: string, unit: LengthUnit, expected: ExpectedReading): Outcome<Length> {
  const size = parseLength(typed, unit)
  if (!size.ok) return size
  const { place, what, between } = expected
  const fits = (length: Length) => length >= between.least && length <= between.most
  if (size.value <= 0) return refused('size-not-above-zero', { place, what, typed: typed.trim() })
  if (fits(size.value)) return size
  const least = lengthAmount(between.least, unit)
  const facts = { place, what, typed: typed.trim(), least, most: lengthAmount(between.most, unit) }
  const number = typed.trim().replace(/[^\d.,]+$/, '')
  for (const other of lengthUnits) {
    const inOtherUnit = parseLength(`${number} ${other}`)
    if (inOtherUnit.ok && fits(inOtherUnit.value))
      return refused('reading-in-other-unit', {
        ...facts,
        unit: other,
        meant: lengthAmount(inOtherUnit.value, unit),
      })
  }
  return refused('reading-far-off', facts)
}
