import { namedUnit, type ReadingUnit } from '../quantity/index.ts'

/** A reading as an instrument sent it. */
export interface SentValue {
  readonly kind: 'value'
  /** With a point and perhaps a minus, its decimals as they were sent: `-12.50`. */
  readonly number: string
  /** Null where the line names none. */
  readonly unit: ReadingUnit | null
}

/** What a line says: a reading, a number in a unit that is not known, or neither. */
export type SentLine =
  | SentValue
  | { readonly kind: 'unit-unknown'; readonly unit: string }
  /** No number, several of them, or one that can be read in two ways. */
  | { readonly kind: 'noise' }

const noise: SentLine = { kind: 'noise' }

/** Words before the number, such as a channel or `OK`; then sign and number; then the unit. */
const form =
  /^([^\d.,+\u2212-]{0,24})([+\u2212-]?)\s*(\d{0,15})(?:([.,])(\d{0,15}))?\s*([^\d\s][^\d]{0,11})?$/u

/**
 * Reads one line: `24.3`, `+0012,50 mm`, `T = 24.3 Nm`, `- 0.02 in`. There must be one number in it, written with one point or one
 * comma or none; anything else is no reading, for a wrong one would be worse than none. Never throws, whatever the text.
 */
export function readSentLine(line: string): SentLine {
  const found = form.exec(lineText(line))
  if (!found) return noise
  const [, before = '', sign = '', whole = '', mark = '', fraction = '', after = ''] = found
  if (whole === '' && fraction === '') return noise
  // A letter right before a digit is a name: `A1`, `0x1F`.
  if (sign === '' && /\p{L}$/u.test(before)) return noise
  const named = after.replace(/[\s,;*]+$/, '')
  const unit = named === '' ? null : (namedUnit(named) ?? namedUnit(/^\S+/.exec(named)?.[0] ?? ''))
  if (unit === undefined) return { kind: 'unit-unknown', unit: named }
  const isNegative = sign !== '' && sign !== '+' && /[1-9]/.test(whole + fraction)
  const digits = whole.replace(/^0+(?=\d)/, '') || '0'
  const decimals = mark === '' || fraction === '' ? '' : `.${fraction}`
  return { kind: 'value', number: `${isNegative ? '-' : ''}${digits}${decimals}`, unit }
}

/** As a person would type it into a field: the unit that was sent, else the one that the instrument measures in. */
export function typedAs({ number, unit }: SentValue, unitWhenNone: ReadingUnit): string {
  const named = unit ?? unitWhenNone
  return named === '°' ? `${number}°` : `${number} ${named}`
}

/** Without control characters, and with what was sent as UTF-8 and read byte by byte put right. */
function lineText(line: string): string {
  return line
    .replaceAll('\u00e2\u0088\u0092', '\u2212')
    .replaceAll('\u00e2\u008b\u0085', '\u00b7')
    .replaceAll('\u00ce\u00bc', '\u00b5')
    .replace(/\u00c2(?=[\u00b0\u00b5\u00b7])/g, '')
    .replace(/[\p{Cc}\u00a0]/gu, ' ')
    .trim()
}
