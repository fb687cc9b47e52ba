import type { CrankTurned } from '../../../core/builds/index.ts'
import { newtonMetres, torqueOf, type TorqueUnit } from '../../../core/quantity/index.ts'
import { isTorqueUnit, turningAmount } from '../../../core/tightening/index.ts'
import type { Words } from '../../../core/words/index.ts'

/** What the crank took to turn and how it rose, in the unit of the manual. */
export function turnedText(
  words: Words,
  { reading, rise_Nm, verdict, accepted, note }: Omit<CrankTurned, 'seq'>,
  unit: TorqueUnit,
): string {
  const { amount } = words.amounts
  const torque =
    reading !== null && /[×xX]/.test(reading.typed) && isTorqueUnit(reading.unit)
      ? amount(turningAmount(torqueOf(reading.value, reading.unit), unit))
      : null
  const rise = rise_Nm === null ? null : amount(turningAmount(newtonMetres(rise_Nm), unit))
  return words.turning.read({ typed: reading?.typed ?? null, torque, verdict, rise, accepted, note })
}
