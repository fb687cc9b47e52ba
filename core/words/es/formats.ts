import type { Words } from '../words.ts'
import { countingIn, datesOf, listsOf, numbersOf } from '../formats/index.ts'

const { amount, fixed, plain } = numbersOf('es')

export { fixed, plain }
/** A designation of a thread, `M10×1,25`, from how a spec has it. */
export const thread = (designation: string): string => designation.replace('.', ',')
export const counted = countingIn('es')
/** `A, B y C`. */
export const { and: listed } = listsOf('es')

export const amounts: Words['amounts'] = {
  amount,
  span: ({ from, upTo }) =>
    from === null ? `como máximo ${amount(upTo)}` : `${amount(from)} a ${amount(upTo)}`,
}

/** `5 mar 2026, 09:05:12`. */
export const dates = datesOf('es')
export const { day, dayAndTime } = dates
