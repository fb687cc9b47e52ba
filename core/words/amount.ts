declare const ofAnAmount: unique symbol

/** A number with its unit as it is shown: rounded already, to be written in the way of a language. */
export interface Amount {
  /** Rounded to `decimals`. */
  readonly amount: number
  readonly decimals: number
  /** Whether zeros that close the fraction are left off. */
  readonly isShort: boolean
  /** As it is printed; empty for a number that stands beside one with the unit. */
  readonly unit: string
}

/** From one amount to another, both included. */
export interface Span {
  /** Null where there is no lower end. */
  readonly from: Amount | null
  readonly upTo: Amount
}

/**
 * An amount or a span as a sentence of a table has it: a text already. In the facts of that sentence it is still a number with
 * its unit.
 */
export type AmountText = string & { readonly [ofAnAmount]: true }
