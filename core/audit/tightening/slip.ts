import type { Amount } from '../../words/index.ts'
import { torqueAmount, torqueIn, torqueOf, type Torque, type TorqueUnit } from '../../quantity/index.ts'

/** The unit that a number was written with, and the one it was meant in. */
interface Mistake {
  readonly written: TorqueUnit
  readonly meant: TorqueUnit
}

/** Mistakes of unit that make a torque far too large: inch-pounds taken for something bigger. */
export const tooMuch: readonly Mistake[] = [
  { written: 'lbf·ft', meant: 'lbf·in' },
  { written: 'N·m', meant: 'lbf·in' },
]

/** Those that make it far too small. */
export const tooLittle: readonly Mistake[] = [
  { written: 'lbf·in', meant: 'lbf·ft' },
  { written: 'lbf·in', meant: 'N·m' },
]

/** The same number in the unit it was likely meant in. */
export interface Slip {
  readonly written: Amount
  readonly meant: Amount
  readonly inNewtonMetres: Amount
}

/**
 * The mistake of unit that explains a torque, because the same number is plausible in the other unit; null when none does.
 * A number that is whole in the unit it was written with goes before one that is not: people write whole numbers.
 */
export function slipOf(
  torque: Torque,
  mistakes: readonly Mistake[],
  isPlausible: (torque: Torque) => boolean,
): Slip | null {
  const numberIn = (unit: TorqueUnit): number => torqueIn(torque, unit)
  const explaining = mistakes.filter(({ written, meant }) => isPlausible(torqueOf(numberIn(written), meant)))
  const whole = explaining.find(
    ({ written }) => Math.abs(numberIn(written) - Math.round(numberIn(written))) < 1e-6,
  )
  const mistake = whole ?? explaining[0]
  if (mistake === undefined) return null
  const value = torqueOf(numberIn(mistake.written), mistake.meant)
  return {
    written: torqueAmount(torque, mistake.written),
    meant: torqueAmount(value, mistake.meant),
    inNewtonMetres: torqueAmount(value, 'N·m'),
  }
}
