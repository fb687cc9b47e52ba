import { amountsIn } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'

/** The unit of an instrument. Its readings are whole counts of 0.001 mm or of 0.0001 in. */
export type GaugeUnit = 'mm' | 'in'

export const gaugeDecimals: Readonly<Record<GaugeUnit, number>> = { mm: 3, in: 4 }
export const mmPerCount: Readonly<Record<GaugeUnit, number>> = { mm: 0.001, in: 0.00254 }

/** `62.005` of 62 005 counts of 0.001 mm. */
export function countsText(words: Words, counts: number, unit: GaugeUnit): string {
  return amountsIn(words).number(counts / 10 ** gaugeDecimals[unit], gaugeDecimals[unit])
}
