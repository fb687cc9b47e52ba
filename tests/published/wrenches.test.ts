import { describe, expect, it } from 'vitest'
import { hexBearingFace, torqueAgainstProof } from '../../core/joint/index.ts'
import {
  formatTorque,
  formatTorqueNumber,
  millimetres,
  newtonMetres,
  torqueOf,
} from '../../core/quantity/index.ts'
import { given, thread } from '../core/joint/workshop.ts'

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
    expect(formatTorqueNumber(torqueOf(pounds, 'lbf·ft'), 'N·m', 0)).toBe(String(printed))
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
    expect(formatTorque(torqueOf(value, unit), 'N·m', 0)).toBe(`${printed} N·m`)
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
    const bearing = given(hexBearingFace(pulled, millimetres(flats)))
    for (const [propertyClass, torque] of [
      ['8.8', grade5],
      ['10.9', grade8],
    ] as const) {
      const found = given(
        torqueAgainstProof({ thread: pulled, propertyClass, bearing, torque: newtonMetres(torque) }),
      )
      expect(found.verdict).toBe('plausible')
    }
  })
})
