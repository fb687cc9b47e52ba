import type { Amount } from '../../amount.ts'
import { digitsOf, digitsSaid } from '../../formats/index.ts'

const small = [
  ...[
    'zero',
    'one',
    'two',
    'three',
    'four',
    'five',
    'six',
    'seven',
    'eight',
    'nine',
    'ten',
    'eleven',
    'twelve',
  ],
  ...['thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'],
]
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety']

/** How a unit is said, of one and of several. */
const units: Readonly<Record<string, readonly [string, string]>> = {
  'N·m': ['newton metre', 'newton metres'],
  'lbf·ft': ['pound-foot', 'pound-feet'],
  'lbf·in': ['pound-inch', 'pound-inches'],
  'kgf·m': ['kilogram-force metre', 'kilogram-force metres'],
  'kgf·cm': ['kilogram-force centimetre', 'kilogram-force centimetres'],
  'dN·m': ['decinewton metre', 'decinewton metres'],
  'ozf·in': ['ounce-inch', 'ounce-inches'],
  '°': ['degree', 'degrees'],
  mm: ['millimetre', 'millimetres'],
  in: ['inch', 'inches'],
  µm: ['micrometre', 'micrometres'],
  thou: ['thou', 'thou'],
}

/** A whole number in words: `one hundred and twenty-four`. From 0 up to a million; beyond, digit by digit. */
function whole(digits: string): string {
  const n = Number(digits)
  if (n >= 1_000_000) return [...digits].map((digit) => small[Number(digit)]).join(' ')
  if (n >= 1000) {
    const rest = n % 1000
    const thousands = `${whole(String(Math.floor(n / 1000)))} thousand`
    return rest === 0 ? thousands : `${thousands}${rest < 100 ? ' and' : ''} ${whole(String(rest))}`
  }
  if (n >= 100) {
    const hundreds = `${small[Math.floor(n / 100)]} hundred`
    return n % 100 === 0 ? hundreds : `${hundreds} and ${whole(String(n % 100))}`
  }
  if (n < 20) return small[n]!
  return n % 10 === 0 ? tens[n / 10]! : `${tens[Math.floor(n / 10)]}-${small[n % 10]}`
}

/** A number with its unit as it is said: `twenty-four newton metres`, `zero point zero five millimetres`. */
export function spokenAmount(said: Amount): string {
  const { isNegative, digits, fraction } = digitsOf(said)
  const sign = isNegative ? 'minus ' : ''
  const decimalsSaid =
    fraction === '' ? '' : ` point ${[...fraction].map((digit) => small[Number(digit)]).join(' ')}`
  const { unit } = said
  const number = `${sign}${whole(digits)}${decimalsSaid}`
  const [one, several] = units[unit] ?? [unit, unit]
  if (unit === '') return number
  return `${number} ${fraction === '' && digits === '1' ? one : several}`
}

/** The number that stands beside a fastener, which may have letters: `6` is six, `A12` is A twelve. */
export function spokenName(name: string): string {
  return digitsSaid(name, whole)
}
