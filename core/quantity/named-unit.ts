import { angleSpellings } from './angle.ts'
import { lengthSpellings, type LengthUnit } from './length.ts'
import { unitNamed } from './measure.ts'
import { torqueSpellings, type TorqueUnit } from './torque.ts'

/** Whatever a reading may be in. */
export type ReadingUnit = TorqueUnit | LengthUnit | '°'

const spellings = { ...torqueSpellings, ...lengthSpellings, ...angleSpellings }

/** The unit that a text names, of whichever quantity, in any of the spellings that are read: `Nm`, `ft-lb`, `mm`, `deg`. */
export function namedUnit(name: string): ReadingUnit | undefined {
  return unitNamed(name, spellings)
}
