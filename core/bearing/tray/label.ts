import type { HalfName } from '../../engine/index.ts'

/** What a compartment of the tray holds; `undersize` is null for the standard size. */
interface Compartment {
  readonly grade: string
  readonly undersize: string | null
  readonly half: HalfName | 'either'
}

const signs = { upper: '↑', lower: '↓', left: '←', right: '→' } as const satisfies Record<HalfName, string>

/** What stands on a compartment and in the record, the same whatever language the window is in: `A`, `A 0.25 mm ↑`. */
export function compartmentLabel({ grade, undersize, half }: Compartment): string {
  return [grade, undersize, half === 'either' ? null : signs[half]].filter((part) => part !== null).join(' ')
}

/** What stands on a single shell and in the record. */
export function singleLabel(number: number): string {
  return `#${number}`
}
