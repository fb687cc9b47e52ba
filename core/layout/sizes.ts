import type { Sheet } from './facts.ts'

/** How high the callout is, in capitals. */
export const calloutHeight = 1.9

/** How large things are drawn that have no size of their own on the engine, in px of the sheet. */
export interface Sizes {
  /** Capitals of a fastener's number, where there is room for its disc. */
  readonly number: number
  /** Capitals of names: of saddles, of the nose. */
  readonly name: number
  /** Capitals of what is said beside the names. */
  readonly quiet: number
  /** Capitals of what is next: of its number, where there is room for its disc, and in the callout. */
  readonly next: number
}

/** Names of this measure; from further away only what is next has to be read. */
const mostOfNames = 18
/** Numbers grow with the sheet, as their discs do: this share of its height. */
const numberOfHeight = 0.03
const mostOfNumber = 32
/** Smaller capitals are not read on any screen: those of a 12 px font. */
export const leastCapital = 8.1

export function sizesOn({ capitalPx, heightPx }: Sheet): Sizes {
  const measure = clamp(capitalPx, leastCapital, mostOfNames)
  const number = Math.max(measure, Math.min(heightPx * numberOfHeight, mostOfNumber))
  return {
    number,
    name: clamp(measure * 0.72, 9, 13),
    quiet: clamp(measure * 0.62, leastCapital, 11),
    next: Math.max(capitalPx, Math.min(measure * 1.5, 30), number * 1.2),
  }
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most)
}
