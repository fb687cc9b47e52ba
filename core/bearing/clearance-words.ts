import type { Words } from '../words/index.ts'
import { fixedAmount, inMicrometres, type Length } from '../quantity/index.ts'
import { wholeSpan, type Clearance, type Range } from './clearance.ts'

/** `38 µm (24 to 52)`: the nominal clearance and the worst case on both sides. */
export function clearanceText(words: Words, { nominal, least, most }: Clearance): string {
  const whole = (length: Length, unit: string) =>
    words.amounts.amount(fixedAmount(inMicrometres(length), unit, 0))
  return words.clearance.withWorst({
    nominal: whole(nominal, 'µm'),
    least: whole(least, ''),
    most: whole(most, ''),
  })
}

/** `38 µm`: the nominal one alone, where the worst case stands beside it. */
export function nominalClearance(words: Words, { nominal }: Clearance): string {
  return words.amounts.amount(fixedAmount(inMicrometres(nominal), 'µm', 0))
}

/** `30 to 40 µm`: rounded, for what is only likely. */
export function wholeRange(words: Words, range: Range): string {
  return words.amounts.span(wholeSpan(range))
}
