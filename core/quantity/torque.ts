import { done, type Outcome } from '../problem/index.ts'
import type { Amount } from '../words/index.ts'
import { fixedAmount, shortAmount } from './amount.ts'
import { finite, type Quantity } from './brand.ts'
import { readAmount, type Spellings } from './measure.ts'

/** A torque in newton metres. */
export type Torque = Quantity<'torque'>

/** What a bench reads torques in. */
export const benchTorqueUnits = ['N·m', 'lbf·ft', 'lbf·in', 'kgf·m'] as const
/** All that a scale may be marked in, and a value written in. */
export const torqueUnits = [...benchTorqueUnits, 'kgf·cm', 'dN·m', 'ozf·in'] as const
export type TorqueUnit = (typeof torqueUnits)[number]
export type BenchTorqueUnit = (typeof benchTorqueUnits)[number]

/**
 * Newton metres in one unit. Exact by definition (NIST SP 811, appendix B.8) from the pound 0.453 592 37 kg, the foot
 * 0.3048 m, the inch 0.0254 m and standard gravity 9.806 65 m/s²: written out to the last digit that binary holds.
 */
const newtonMetresIn: Readonly<Record<TorqueUnit, number>> = {
  'N·m': 1,
  'lbf·ft': 1.3558179483314004,
  'lbf·in': 0.1129848290276167,
  'kgf·m': 9.80665,
  'kgf·cm': 0.0980665,
  'dN·m': 0.1,
  'ozf·in': 0.007061551814226044,
}

export const torqueSpellings: Spellings<TorqueUnit> = {
  'N·m': ['nm'],
  'lbf·ft': ['lbfft', 'lbft', 'lbsft', 'ftlbf', 'ftlb', 'ftlbs'],
  'lbf·in': ['lbfin', 'lbin', 'lbsin', 'inlbf', 'inlb', 'inlbs'],
  'kgf·m': ['kgfm', 'kgm', 'mkgf', 'mkg'],
  'kgf·cm': ['kgfcm', 'kgcm', 'cmkgf', 'cmkg'],
  'dN·m': ['dnm'],
  'ozf·in': ['ozfin', 'ozin', 'inozf', 'inoz'],
}

const usualDecimals: Readonly<Record<TorqueUnit, number>> = {
  'N·m': 1,
  'lbf·ft': 1,
  'lbf·in': 0,
  'kgf·m': 2,
  'kgf·cm': 0,
  'dN·m': 0,
  'ozf·in': 0,
}

/** Throws a RangeError unless the number is finite. */
export function newtonMetres(n: number): Torque {
  return finite(n) as Torque
}

/** A number in a unit. Throws a RangeError unless it is finite. */
export function torqueOf(value: number, unit: TorqueUnit): Torque {
  return newtonMetres(value * newtonMetresIn[unit])
}

/** The torque in a unit, not rounded. */
export function torqueIn(torque: Torque, unit: TorqueUnit): number {
  return torque / newtonMetresIn[unit]
}

/**
 * A torque as it is typed: `24 N·m`, `24 Nm`, `17.7 ft-lb`, `2,45 kgf m`. Upper and lower case are one, and a dot, a
 * hyphen or a blank between the parts of the unit is as good as the middle dot. `unitWhenNone` is the unit of a bare number.
 *
 * Refuses what `parseNumber` refuses, `number-negative`, `unit-unknown`, `unit-missing`.
 */
export function parseTorque(typed: string, unitWhenNone?: TorqueUnit): Outcome<Torque> {
  const read = readAmount(typed, torqueSpellings, unitWhenNone)
  return read.ok ? done(torqueOf(read.value.amount, read.value.unit)) : read
}

/** As `parseTorque`, with the number and the unit as they were typed, for where the typed value itself is kept. */
export function readTorque(
  typed: string,
  unitWhenNone: TorqueUnit,
): Outcome<{ readonly amount: number; readonly unit: TorqueUnit }> {
  return readAmount(typed, torqueSpellings, unitWhenNone)
}

/**
 * The torque in a unit as a fact of a sentence. Unless given, at most 1 decimal for N·m and lbf·ft, 2 for kgf·m, none for the
 * others, and zeros that close the fraction are left off; with `decimals` given there are exactly so many.
 */
export function torqueAmount(torque: Torque, unit: TorqueUnit, decimals?: number): Amount {
  const value = torqueIn(torque, unit)
  return decimals === undefined
    ? shortAmount(value, unit, usualDecimals[unit])
    : fixedAmount(value, unit, decimals)
}
