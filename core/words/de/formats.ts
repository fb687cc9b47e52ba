import type { Words } from '../words.ts'
import { countingIn, datesOf, listsOf, numbersOf } from '../formats/index.ts'

const { amount, fixed, plain } = numbersOf('de')

export { fixed, plain }
/** A designation of a thread, `M10×1,25`, from how a spec has it. */
export const thread = (designation: string): string => designation.replace('.', ',')
export const counted = countingIn('de')
export const { and, or } = listsOf('de')

export const amounts: Words['amounts'] = {
  amount,
  span: ({ from, upTo }) =>
    from === null ? `höchstens ${amount(upTo)}` : `${amount(from)} bis ${amount(upTo)}`,
}

/** `05.03.2026, 09:05:12`. */
export const dates = datesOf('de', { day: '2-digit', month: '2-digit' })
export const { day, dayAndTime } = dates
