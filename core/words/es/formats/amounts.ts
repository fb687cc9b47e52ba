import type { Amount, Span } from '../../amount.ts'

/** Each made once: to make an `Intl.NumberFormat` takes far longer than to use it. */
const formats = new Map<string, Intl.NumberFormat>()

function numberFormat(least: number, most: number): Intl.NumberFormat {
  const key = `${least}/${most}`
  const known = formats.get(key)
  if (known !== undefined) return known
  const digits = { minimumFractionDigits: least, maximumFractionDigits: most }
  const format = new Intl.NumberFormat('es', { ...digits, useGrouping: false, signDisplay: 'negative' })
  formats.set(key, format)
  return format
}

function amount({ amount, decimals, isShort, unit }: Amount): string {
  const number = numberFormat(isShort ? 0 : decimals, decimals)
    .format(amount)
    .replace('-', '\u2212')
  if (unit === '') return number
  return unit === '°' ? `${number}°` : `${number}\u00A0${unit}`
}

function span({ from, upTo }: Span): string {
  return from === null ? `como máximo ${amount(upTo)}` : `${amount(from)} a ${amount(upTo)}`
}

/** A number with exactly so many decimals. */
export function fixed(value: number, decimals: number, unit = ''): string {
  return amount({ amount: value, decimals, isShort: false, unit })
}

/** A number with the decimals that it has: `12,5`. */
export function plain(value: number): string {
  return amount({ amount: value, decimals: 6, isShort: true, unit: '' })
}

/** Numbers with their units, wherever they stand in a sentence. */
export const amounts = { amount, span }
