import type { Amount, Span } from '../amount.ts'
import { countingIn, datesOf, numbersOf } from '../formats/index.ts'

const { amount, fixed, plain } = numbersOf('en')

export { fixed, plain }
export const counted = countingIn('en')

/** Numbers with their units, wherever they stand in a sentence. */
export const amounts = {
  amount: (facts: Amount) => amount(facts),
  span: ({ from, upTo }: Span) =>
    from === null ? `at most ${amount(upTo)}` : `${amount(from)} to ${amount(upTo)}`,
}

/** Days and times by themselves, in tables and below what was entered: `5 Mar 2026, 09:05:12`. */
export const dates = datesOf('en-GB')
export const { day, dayAndTime } = dates
