import type { Amount } from '../amount.ts'

/** The digits of a number as it is written, before and after its decimal mark, for a language to say them. */
export interface Digits {
  readonly isNegative: boolean
  readonly digits: string
  /** Empty for a whole number. */
  readonly fraction: string
}

export function digitsOf({ amount, decimals, isShort }: Amount): Digits {
  const written = Math.abs(amount).toFixed(decimals)
  const [digits = '0', fraction = ''] = (
    isShort && decimals > 0 ? written.replace(/\.?0+$/, '') : written
  ).split('.')
  return { isNegative: amount < 0 && /[1-9]/.test(written), digits, fraction }
}

/** A name with each run of digits in it said as a number: `A12` as `A` and what `12` is. */
export function digitsSaid(name: string, said: (digits: string) => string): string {
  return name
    .replace(/\d+/g, (digits) => ` ${said(digits)} `)
    .replace(/\s+/g, ' ')
    .trim()
}
