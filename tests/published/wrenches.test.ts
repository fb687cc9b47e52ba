import { describe, expect, it } from 'vitest'
import {
  adapter,
  permittedDeviation,
  scaleShare,
  showWindow,
  takeReading,
  usableRange,
  verdictOf,
  withRunning,
  wrench,
} from '../../core/tightening/index.ts'
import {
  frictionOf,
  hexBearingFace,
  runsFree,
  strengthOf,
  torqueAgainstProof,
} from '../../core/joint/index.ts'
import { amountsIn, millimetres, newtonMetres, torqueOf } from '../../core/quantity/index.ts'
import { en } from '../../core/words/index.ts'
import { valueOf, thread } from '../core/joint/workshop.ts'

const shown = amountsIn(en)

// TM 9-2320-362-14&P, table F-1, prints each torque in lb-ft and in whole N·m. Two of its pairs are off by one, 300 (408, the
// product is 406.7) and 80 (109, the product is 108.5), and are left out.
describe('torques printed in two units, TM 9-2320-362-14&P, table F-1', () => {
  it.each([
    [6, 8],
    [10, 14],
    [15, 20],
    [26, 35],
    [43, 58],
    [65, 88],
    [90, 122],
    [130, 176],
    [185, 251],
    [440, 597],
    [635, 861],
  ])('%d lbf·ft is %d N·m', (pounds, printed) => {
    expect(shown.torque(torqueOf(pounds, 'lbf·ft'), 'N·m', 0)).toBe(`${printed} N·m`)
  })
})

// TM 5-2330-325-13&P, WP 0095: recommended 50-70 lbf·in, 30 lbf·in one turn from seating, wrench reading 80-100 lbf·in. TM
// 1-1500-204-23-6, p. 2-83, has the same sum for every self-locking nut.
describe('a self-locking nut', () => {
  it('is pulled to the torque of the table and what it took to run down: 50 to 70 and 30 are 80 to 100 lbf·in', () => {
    const inches = (torque: number) => torqueOf(torque, 'lbf·in')
    const table = { least: inches(50), most: inches(70), target: inches(60) }
    const wanted = withRunning({ kind: 'torque', tolerance: 'spec', ...table }, inches(30))
    expect(showWindow(wanted, 'lbf·in')).toMatchObject({ least: 80, most: 100 })
    const read = (typed: string) => {
      const reading = valueOf(
        takeReading(
          { kind: 'torque', tolerance: 'spec', ...table },
          { typed, unit: 'lbf·in' },
          null,
          inches(30),
        ),
      )
      return verdictOf({ kind: 'torque', tolerance: 'spec', ...table }, reading.value)
    }
    expect(['79', '80', '100', '101'].map(read)).toEqual(['under', 'within', 'within', 'over'])
  })
})

describe('torques printed in two units, TM 9-2330-384-14&P, table H-1', () => {
  it.each([
    [50, 'lbf·in', 6],
    [60, 'lbf·in', 7],
    [108, 'lbf·in', 12],
    [144, 'lbf·in', 16],
    [9, 'lbf·ft', 12],
    [12, 'lbf·ft', 16],
    [30, 'lbf·ft', 41],
    [100, 'lbf·ft', 136],
  ] as const)('%d %s is %d N·m', (value, unit, printed) => {
    expect(shown.torque(torqueOf(value, unit), 'N·m', 0)).toBe(`${printed} N·m`)
  })
})

// The metric half of table F-1: clean, dry threads; its grades 5 and 8 taken as classes 8.8 and 10.9, common practice. Across
// flats of ISO 4014.
describe('general torques for metric screws are neither an overload nor next to no clamp', () => {
  it.each([
    [6, 1, 10, 14, 16],
    [8, 1.25, 13, 27, 31],
    [10, 1.5, 16, 54, 65],
    [12, 1.75, 18, 95, 109],
    [14, 2, 21, 153, 179],
    [16, 2, 24, 239, 281],
    [20, 2.5, 30, 465, 541],
  ])('M%d×%d, %d mm across flats: %d and %d N·m', (diameter, pitch, flats, grade5, grade8) => {
    const pulled = thread(diameter, pitch)
    const bearing = valueOf(hexBearingFace(pulled, millimetres(flats)))
    for (const [propertyClass, torque] of [
      ['8.8', grade5],
      ['10.9', grade8],
    ] as const) {
      const strength = valueOf(strengthOf(propertyClass, pulled))
      const screw = {
        thread: pulled,
        strength,
        bearing,
        friction: frictionOf.dry,
        prevailing: runsFree,
      }
      const found = torqueAgainstProof(screw, { target: newtonMetres(torque) })
      expect(found.verdict).toBe('plausible')
    }
  })
})

/** A wrench of a length, with an adapter of an offset at an angle. */
function withAdapter(length: string, offset: string, angle: string) {
  const range = { least: '10 lbf·ft', most: '50 lbf·ft' }
  const scale = { unit: 'lbf·ft', step: 1 }
  return {
    wrench: wrench.parse({ id: 'any', name: 'Any', range, scale, length }),
    adapter: adapter.parse({ id: 'foot', name: 'Foot', offset, angle }),
  }
}

describe('what to set a wrench to with an adapter', () => {
  it.each([
    ['TM 9-2350-277-40&P, wrench 12 in, adapter 4 in: 40 lbf·ft', 40, '12 in', '4 in', '0 °', 30],
    [
      'TM 1-1500-204-23-9, figure 8-16, wrench 10 in, adapter 4 in: 300 lbf·in',
      300,
      '10 in',
      '4 in',
      '0 °',
      214,
    ],
    // Printed with its millimetres; 22 in and 3 in.
    ['TM 5-3805-274-13&P, figure 4, wrench 22 in, adapter 3 in: 19 lbf·ft', 19, '22 in', '3 in', '0 °', 17],
    ['TM 9-2350-277-20-2, square to the handle, no correction: 40 lbf·ft', 40, '12 in', '4 in', '90 °', 40],
  ])('%s is set to %d', (_, wanted, length, offset, angle, printed) => {
    const share = valueOf(scaleShare(withAdapter(length, offset, angle)))
    expect(Math.round(wanted * share)).toBe(printed)
  })

  // By L/(L + E·cos α), as TM 9-254, figure 4-6, and TM 1-1500-204-23-9 print it; what it comes to by hand.
  it.each([
    ['45 °', 32.37],
    ['135 °', 52.336],
    ['60 °', 34.286],
    ['120 °', 48],
  ])('oblique at %s, wrench 12 in, adapter 4 in: 40 lbf·ft is set to %d', (angle, setting) => {
    expect(40 * valueOf(scaleShare(withAdapter('12 in', '4 in', angle)))).toBeCloseTo(setting, 2)
  })

  // A helicopter's maintenance manual of 2010, standard practices, figures 20-1 and 20-2: wrench 10 in, adapter 1.5 in.
  it.each([
    ['0 °', 117.39],
    ['180 °', 158.82],
  ])('135 lbf·in with the adapter at %s is set to %d lbf·in', (angle, setting) => {
    expect(135 * valueOf(scaleShare(withAdapter('10 in', '1.5 in', angle)))).toBeCloseTo(setting, 2)
  })
})

describe('ISO 6789-1, type II class A', () => {
  const made = { type: 'II', class: 'A' }
  const scale = { unit: 'N·m', step: 0.1 }
  const parsed = (least: string, most: string) =>
    wrench.parse({ id: 'any', name: 'Any', range: { least, most }, scale, made })

  it('is within 4 % above 10 N·m full scale, and within 6 % at or below', () => {
    expect(permittedDeviation(parsed('20 N·m', '100 N·m'))).toBe(0.04)
    expect(permittedDeviation(parsed('2 N·m', '10 N·m'))).toBe(0.06)
  })

  it('is used from a fifth of full scale, as TM 1-1500-204-23-9 has it too', () => {
    expect(usableRange(parsed('5 N·m', '100 N·m')).from).toBe(20)
  })
})
