import { lengthOf, type Length } from '../../quantity/index.ts'
import type { Procedure } from '../../engine/index.ts'
import { counts } from '../run/plan.ts'
import { isLengthUnit } from './reading.ts'
import type { Pull, Run } from '../run/run.ts'

/** The length that a pull was read as; null where it was read as something else, or not at all. */
export function lengthOfPull({ reading }: Pull): Length | null {
  return reading === null || !isLengthUnit(reading.unit) ? null : lengthOf(reading.value, reading.unit)
}

/** By how much a length is longer than the one before, in nanometres; null where that was not measured. */
export function stretchOf(
  procedure: Procedure,
  run: Run,
  fastener: string | null,
  length: number,
): number | null {
  const measured = run.pulls.findLast(
    (pull) => counts(pull) && pull.fastener === fastener && procedure.passes[pull.pass]?.kind === 'length',
  )
  const before = measured === undefined ? null : lengthOfPull(measured)
  return before === null ? null : length - before
}
