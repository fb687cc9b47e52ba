import type { HalfName } from '../../engine/index.ts'
import { shortLengthAmount, type Length, type LengthUnit } from '../../quantity/index.ts'

/** What a compartment of the tray holds; `undersize` is what comes off the journal, null for the standard size. */
interface Compartment {
  readonly grade: string
  readonly undersize: Length | null
  readonly half: HalfName | 'either'
}

const signs = { upper: '↑', lower: '↓', left: '←', right: '→' } as const satisfies Record<HalfName, string>

/** What stands on a compartment and in the record, the same whatever language the window is in: `A`, `A 0.25 mm ↑`. */
export function compartmentLabel({ grade, undersize, half }: Compartment, unit: LengthUnit): string {
  const size = undersize === null ? null : shortLengthAmount(undersize, unit)
  const sizeText = size === null ? null : `${size.amount} ${size.unit}`
  return [grade, sizeText, half === 'either' ? null : signs[half]].filter((part) => part !== null).join(' ')
}

/** What stands on a single shell and in the record. */
export function singleLabel(number: number): string {
  return `#${number}`
}
