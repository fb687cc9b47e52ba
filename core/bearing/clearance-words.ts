import { en } from '../words/index.ts'
import { formatNumber, inMicrometres, type Length } from '../quantity/index.ts'
import type { Clearance, Range } from './clearance.ts'
import type { Verdict } from './limits.ts'

const whole = (length: Length) => formatNumber(inMicrometres(length), 0)

/** `38 µm (24 to 52)`: the nominal clearance and the worst case on both sides. */
export function clearanceText({ nominal, least, most }: Clearance): string {
  return `${whole(nominal)} µm (${whole(least)} to ${whole(most)})`
}

/** `30 to 40 µm`: rounded, for what is only likely. */
export function wholeRange({ least, most }: Range): string {
  return `${whole(least)} to ${whole(most)} µm`
}

export const verdictText: { readonly [Each in Verdict]: string } = en.clearance.verdicts
