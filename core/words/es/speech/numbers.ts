import type { Amount } from '../../amount.ts'
import { digitsOf, digitsSaid } from '../../formats/index.ts'

const small = [
  ...['cero', 'uno', 'dos', 'tres', 'cuatro', 'cinco', 'seis', 'siete', 'ocho', 'nueve'],
  ...['diez', 'once', 'doce', 'trece', 'catorce', 'quince'],
  ...['dieciséis', 'diecisiete', 'dieciocho', 'diecinueve'],
  ...['veinte', 'veintiuno', 'veintidós', 'veintitrés', 'veinticuatro', 'veinticinco'],
  ...['veintiséis', 'veintisiete', 'veintiocho', 'veintinueve'],
]
const tens = ['', '', '', 'treinta', 'cuarenta', 'cincuenta', 'sesenta', 'setenta', 'ochenta', 'noventa']
const hundreds = [
  ...['', 'ciento', 'doscientos', 'trescientos', 'cuatrocientos', 'quinientos'],
  ...['seiscientos', 'setecientos', 'ochocientos', 'novecientos'],
]

interface Unit {
  readonly one: string
  readonly several: string
  readonly isFeminine: boolean
}

const masculine = (one: string, several: string): Unit => ({ one, several, isFeminine: false })
const feminine = (one: string, several: string): Unit => ({ one, several, isFeminine: true })

/** How a unit is said, of one and of several. */
const units: Readonly<Record<string, Unit>> = {
  'N·m': masculine('newton metro', 'newton metro'),
  'lbf·ft': feminine('libra pie', 'libras pie'),
  'lbf·in': feminine('libra pulgada', 'libras pulgada'),
  'kgf·m': masculine('kilogramo fuerza metro', 'kilogramos fuerza metro'),
  'kgf·cm': masculine('kilogramo fuerza centímetro', 'kilogramos fuerza centímetro'),
  'dN·m': masculine('decinewton metro', 'decinewton metro'),
  'ozf·in': feminine('onza pulgada', 'onzas pulgada'),
  '°': masculine('grado', 'grados'),
  mm: masculine('milímetro', 'milímetros'),
  in: feminine('pulgada', 'pulgadas'),
  µm: masculine('micrómetro', 'micrómetros'),
  thou: feminine('milésima de pulgada', 'milésimas de pulgada'),
}

/** A whole number in words: `ciento veinticuatro`. From 0 up to a million; beyond, digit by digit. */
function whole(digits: string): string {
  const n = Number(digits)
  if (n >= 1_000_000) return [...digits].map((digit) => small[Number(digit)]).join(' ')
  if (n >= 1000) {
    const thousands = Math.floor(n / 1000)
    const before = thousands === 1 ? 'mil' : `${beforeNoun(whole(String(thousands)), false)} mil`
    return n % 1000 === 0 ? before : `${before} ${whole(String(n % 1000))}`
  }
  if (n === 100) return 'cien'
  if (n >= 100) {
    const hundred = hundreds[Math.floor(n / 100)]!
    return n % 100 === 0 ? hundred : `${hundred} ${whole(String(n % 100))}`
  }
  if (n < 30) return small[n]!
  const ten = tens[Math.floor(n / 10)]!
  return n % 10 === 0 ? ten : `${ten} y ${small[n % 10]}`
}

/** As it stands before what it counts: `veintiún milímetros`, `doscientas una pulgadas`. */
function beforeNoun(said: string, isFeminine: boolean): string {
  if (isFeminine)
    return said.replaceAll('cientos', 'cientas').replace('quinientos', 'quinientas').replace(/uno$/, 'una')
  return said.replace(/veintiuno$/, 'veintiún').replace(/uno$/, 'un')
}

/** A number with its unit as it is said: `veinticuatro newton metro`, `cero coma cero cinco milímetros`. */
export function spokenAmount(amount: Amount): string {
  const { isNegative, digits, fraction } = digitsOf(amount)
  const { unit } = amount
  const sign = isNegative ? 'menos ' : ''
  if (fraction === '') return sign + counted(digits, unit)
  const decimalsSaid = [...fraction].map((digit) => small[Number(digit)]).join(' ')
  const number = `${sign}${whole(digits)} coma ${decimalsSaid}`
  return unit === '' ? number : `${number} ${units[unit]?.several ?? unit}`
}

function counted(digits: string, unit: string): string {
  if (unit === '') return whole(digits)
  const { one, several, isFeminine } = units[unit] ?? masculine(unit, unit)
  return `${beforeNoun(whole(digits), isFeminine)} ${Number(digits) === 1 ? one : several}`
}

/** The number that stands beside a fastener, which may have letters: `6` is seis, `A12` is A doce. */
export function spokenName(name: string): string {
  return digitsSaid(name, whole)
}
