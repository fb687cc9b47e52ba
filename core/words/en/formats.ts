import type { Amount, Span } from '../amount.ts'
import { countingIn, numbersOf } from '../formats/index.ts'

const { amount, fixed, plain } = numbersOf('en')

export { fixed, plain }
export const counted = countingIn('en')

/** Numbers with their units, wherever they stand in a sentence. */
export const amounts = {
  amount: (facts: Amount) => amount(facts),
  span: ({ from, upTo }: Span) =>
    from === null ? `at most ${amount(upTo)}` : `${amount(from)} to ${amount(upTo)}`,
}
