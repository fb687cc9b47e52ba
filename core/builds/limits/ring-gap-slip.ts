import type { EngineSpec } from '../../engine/index.ts'
import { refused, type Outcome } from '../../problem/index.ts'
import {
  lengthAmount,
  lengthOf,
  parseLength,
  shortLengthAmount,
  type Length,
  type LengthUnit,
} from '../../quantity/index.ts'
import { judgeLimits } from './asked-places.ts'
import type { StepMeasure } from './measures-in.ts'

/** No ring gap is wider than this share of its bore, however worn: what is, was read or typed wrong. */
const widestOfBore = 0.06
/** What a gauge or its reader may have meant instead: the number stays, the unit is another. */
const units = ['mm', 'in', 'thou', 'µm'] as const satisfies readonly LengthUnit[]

/**
 * Whether what was typed as a ring gap is a slip: outside its limits, and within them in another unit, or wider than any ring
 * gap is. Null where it is none. Filing a ring by a reading of the wrong unit would spoil it.
 */
export function ringGapSlip(
  spec: EngineSpec,
  measure: StepMeasure,
  typed: string,
  length: Length,
): Outcome<never> | null {
  if (judgeLimits(measure, length) !== 'outside') return null
  const number = /^[^\p{L}"″”']*/u.exec(typed)?.[0].trim() ?? ''
  for (const unit of units) {
    const other = parseLength(number, unit)
    if (other.ok && other.value !== length && judgeLimits(measure, other.value) !== 'outside')
      return refused('ring-gap-other-unit', {
        ...{ name: measure.name, typed, is: lengthAmount(length, 'mm') },
        meant: shortLengthAmount(other.value, unit, 4),
        inMillimetres: lengthAmount(other.value, 'mm'),
      })
  }
  const bore = measure.bore ?? spec.case.bore
  if (length <= bore * widestOfBore) return null
  const widestGap = lengthOf((bore * widestOfBore) / 1e6, 'mm')
  return refused('ring-gap-impossible', {
    ...{ name: measure.name, typed, is: lengthAmount(length, 'mm') },
    ...{ bore: lengthAmount(bore, 'mm', 1), widest: lengthAmount(widestGap, 'mm', 1) },
  })
}
