import type { Amount } from '../amount.ts'

/** How a language writes numbers: its decimal mark and digits, never grouped. */
export interface Numbers {
  /** A number with its unit, a plain space between them: the window keeps the two on one line. */
  readonly amount: (amount: Amount) => string
  /** A number with exactly so many decimals. */
  readonly fixed: (value: number, decimals: number, unit?: string) => string
  /** A number with as many decimals as it has. */
  readonly plain: (value: number) => string
}

export function numbersOf(locale: string): Numbers {
  /** Each made once: to make an `Intl.NumberFormat` takes far longer than to use it. */
  const formats = new Map<string, Intl.NumberFormat>()

  function formatOf(least: number, most: number): Intl.NumberFormat {
    const key = `${least}/${most}`
    const known = formats.get(key)
    if (known !== undefined) return known
    const digits = { minimumFractionDigits: least, maximumFractionDigits: most }
    const format = new Intl.NumberFormat(locale, { ...digits, useGrouping: false, signDisplay: 'negative' })
    formats.set(key, format)
    return format
  }

  const written = (value: number, least: number, most: number): string =>
    formatOf(least, most).format(value).replace('-', '\u2212')

  function amount({ amount: value, decimals, isShort, unit }: Amount): string {
    const number = written(value, isShort ? 0 : decimals, decimals)
    if (unit === '') return number
    return unit === '°' ? `${number}°` : `${number} ${unit}`
  }

  return {
    amount,
    fixed: (value, decimals, unit = '') => amount({ amount: value, decimals, isShort: false, unit }),
    plain: (value) => written(value, 0, 12),
  }
}
