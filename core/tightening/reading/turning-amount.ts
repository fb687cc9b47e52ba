import { shortAmount, torqueIn, type Torque, type TorqueUnit } from '../../quantity/index.ts'
import type { TurningTorque } from '../../engine/index.ts'
import type { Amount, Words } from '../../words/index.ts'

/** A turning torque with up to three decimals: it is often below 1 N·m. */
export function turningAmount(torque: Torque, unit: TorqueUnit): Amount {
  return shortAmount(torqueIn(torque, unit), unit, 3)
}

/** `at most 2.5 N·m, a rise of at most 0.8 N·m`, in the unit of the manual. */
export function turningText(words: Words, turning: TurningTorque, rise: Torque | null = null): string {
  const shown = (torque: Torque | null) =>
    torque === null ? null : words.amounts.amount(turningAmount(torque, turning.unit))
  const { least, most, mostRise } = turning
  return words.turning.limits({
    ...{ least: shown(least), most: shown(most), mostRise: shown(mostRise), rise: shown(rise) },
  })
}
