import type { Limits } from '../../../core/engine/index.ts'
import { amountsIn, type LengthUnit } from '../../../core/quantity/index.ts'
import type { Words } from '../../../core/words/index.ts'

/** `0.25 mm to 0.40 mm`, in the unit of the bench. */
export function limitsText(words: Words, { least, most }: Limits, unit: LengthUnit): string {
  const shown = amountsIn(words)
  return words.limits.range({
    least: least === undefined ? null : shown.length(least, unit),
    most: most === undefined ? null : shown.length(most, unit),
  })
}
