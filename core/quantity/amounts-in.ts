import type { Amount, Words } from '../words/index.ts'
import { angleAmount, type Angle } from './angle.ts'
import { fixedAmount } from './amount.ts'
import { forceAmount, type Force } from './force.ts'
import { lengthAmount, type Length, type LengthUnit } from './length.ts'
import { temperatureAmount, type Temperature } from './temperature.ts'
import { torqueAmount, type Torque, type TorqueUnit } from './torque.ts'

/** Quantities with their units as the people who read a language write them. Rounded half away from zero. */
export interface ShownAmounts {
  /** `62.000 mm`. With the decimals of `lengthAmount`. */
  length(length: Length, unit: LengthUnit, decimals?: number): string
  /** `38 µm`: the way a clearance is shown. */
  micrometres(length: Length): string
  /** `24 N·m` or `17.7 lbf·ft`. With the decimals of `torqueAmount`. */
  torque(torque: Torque, unit: TorqueUnit, decimals?: number): string
  /** `90°` or `22.5°`. */
  angle(angle: Angle, decimals?: number): string
  /** `31.4 kN`. */
  force(force: Force, decimals?: number): string
  /** `95 °C`. */
  temperature(temperature: Temperature, decimals?: number): string
  /** `0.50`: a number without a unit, with exactly so many decimals. */
  number(value: number, decimals: number): string
}

/** Written as these words write it at the time: they may be of another language by then. */
export function amountsIn(words: Words): ShownAmounts {
  const amount = (shown: Amount) => words.amounts.amount(shown)
  return {
    length: (...of) => amount(lengthAmount(...of)),
    micrometres: (length) => amount(lengthAmount(length, 'µm')),
    torque: (...of) => amount(torqueAmount(...of)),
    angle: (...of) => amount(angleAmount(...of)),
    force: (...of) => amount(forceAmount(...of)),
    temperature: (...of) => amount(temperatureAmount(...of)),
    number: (value, decimals) => amount(fixedAmount(value, '', decimals)),
  }
}
