import type { Amount } from '../../amount.ts'
import { digitsOf, digitsSaid } from '../../formats/index.ts'

const small = [
  ...['null', 'eins', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun', 'zehn', 'elf'],
  ...['zwölf', 'dreizehn', 'vierzehn', 'fünfzehn', 'sechzehn', 'siebzehn', 'achtzehn', 'neunzehn'],
]
const tens = ['', '', 'zwanzig', 'dreißig', 'vierzig', 'fünfzig', 'sechzig', 'siebzig', 'achtzig', 'neunzig']

/** How a unit is said, of one and of several; most are alike in German. */
const units: Readonly<Record<string, string>> = {
  'N·m': 'Newtonmeter',
  'lbf·ft': 'Foot-Pound',
  'lbf·in': 'Inch-Pound',
  'kgf·m': 'Kilopondmeter',
  'kgf·cm': 'Kilopondzentimeter',
  'dN·m': 'Dezinewtonmeter',
  'ozf·in': 'Inch-Ounce',
  '°': 'Grad',
  mm: 'Millimeter',
  in: 'Zoll',
  µm: 'Mikrometer',
  thou: 'Tausendstel Zoll',
}

/** Before another word of the same number: `ein` of `einundzwanzig`, `einhundert`. */
const within = (n: number): string => (n === 1 ? 'ein' : small[n]!)

/** A whole number in words: `einhundertvierundzwanzig`. From 0 up to a million; beyond, digit by digit. */
function whole(digits: string): string {
  const n = Number(digits)
  if (n >= 1_000_000) return [...digits].map((digit) => small[Number(digit)]).join(' ')
  if (n >= 1000) {
    const thousands = Math.floor(n / 1000)
    return `${before(thousands)}tausend${n % 1000 === 0 ? '' : whole(String(n % 1000))}`
  }
  if (n >= 100) return `${within(Math.floor(n / 100))}hundert${n % 100 === 0 ? '' : whole(String(n % 100))}`
  if (n < 20) return small[n]!
  return `${n % 10 === 0 ? '' : `${within(n % 10)}und`}${tens[Math.floor(n / 10)]}`
}

/** A whole number before `tausend` or a unit: `ein`, `einhundertein`. */
const before = (n: number): string => whole(String(n)).replace(/eins$/, 'ein')

/** A number with its unit as it is said: `vierundzwanzig Newtonmeter`, `null Komma null fünf Millimeter`. */
export function spokenAmount(said: Amount): string {
  const { isNegative, digits, fraction } = digitsOf(said)
  const sign = isNegative ? 'minus ' : ''
  const { unit } = said
  if (fraction !== '') {
    const decimals = [...fraction].map((digit) => small[Number(digit)]).join(' ')
    return `${sign}${whole(digits)} Komma ${decimals}${unit === '' ? '' : ` ${units[unit] ?? unit}`}`
  }
  if (unit === '') return `${sign}${whole(digits)}`
  return `${sign}${before(Number(digits))} ${units[unit] ?? unit}`
}

/** The number that stands beside a fastener, which may have letters: `6` is sechs, `A12` is A zwölf. */
export function spokenName(name: string): string {
  return digitsSaid(name, whole)
}
