import {
  benchTorqueUnits,
  lengthIn,
  torqueIn,
  type Length,
  type Torque,
  type TorqueUnit,
} from '../quantity/index.ts'

/**
 * The unit that values which belong together were entered in. A spec keeps them in one unit, but people write few digits:
 * what is whole to a thousandth of a millimetre was written in millimetres, what is whole to half a ten-thousandth of an
 * inch in inches. Millimetres where both are so, or neither.
 */
export function lengthUnitOf(lengths: readonly Length[]): 'mm' | 'in' {
  const metric = lengths.every((length) => isWhole(lengthIn(length, 'mm') * 1000))
  const inches = lengths.every((length) => isWhole(lengthIn(length, 'in') * 20_000))
  return inches && !metric ? 'in' : 'mm'
}

/** The same for torques: whole hundredths of N·m, or else twentieths of another unit of the bench; N·m where none is so. */
export function torqueUnitOf(torques: readonly Torque[]): TorqueUnit {
  const whole = (unit: TorqueUnit, part: number) =>
    torques.every((each) => isWhole(torqueIn(each, unit) * part))
  if (whole('N·m', 100)) return 'N·m'
  return benchTorqueUnits.find((unit) => whole(unit, 20)) ?? 'N·m'
}

/**
 * Whether two limits are one as they are printed: the same, or in two units and at neither end further apart than half of the
 * last digit of the coarser. `0.10 to 0.25 mm` and `0.004 to 0.010 in` are; `0.10` and `0.11 mm` are not.
 */
export function printedAlike(one: LengthLimits, other: LengthLimits): boolean {
  if (one.least === other.least && one.most === other.most) return true
  const [a, b] = [lengthUnitOf([one.least, one.most]), lengthUnitOf([other.least, other.most])]
  if (a === b) return false
  return (['least', 'most'] as const).every(
    (end) => Math.abs(one[end] - other[end]) <= Math.max(halfDigit(one[end], a), halfDigit(other[end], b)),
  )
}

interface LengthLimits {
  readonly least: Length
  readonly most: Length
}

/** The fewest digits that limits are printed with; zeros that close them are not kept. */
const fewestDigits = { mm: 2, in: 3 } as const

/** Half of the last digit that a length is written with in a unit, in nanometres. */
function halfDigit(length: Length, unit: 'mm' | 'in'): number {
  const inUnit = lengthIn(length, unit)
  let digits: number = fewestDigits[unit]
  while (digits < 5 && !isWhole(inUnit * 10 ** digits)) digits += 1
  const nanometresInUnit = unit === 'mm' ? 1e6 : 25.4e6
  return (0.5 * nanometresInUnit) / 10 ** digits
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < 1e-6
}
