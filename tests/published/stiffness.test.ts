import { describe, expect, it } from 'vitest'
import {
  bearingFace,
  clampedResilience,
  seriesResilience,
  threadOf,
  turnForPreload,
  type Layer,
} from '../../core/joint/index.ts'
import { lengthOf, millimetres, newtons, type LengthUnit } from '../../core/quantity/index.ts'
import { given } from '../core/joint/workshop.ts'

/** The book's joints: two parts, the cone from 1.5·d, the hole as large as the bolt. */
function bookJoint(unit: LengthUnit, diameter: number, layers: readonly Layer[]) {
  const bearing = given(bearingFace(lengthOf(1.5 * diameter, unit), lengthOf(diameter, unit)))
  return 1 / clampedResilience(bearing, layers, 'nut')
}

describe("joint stiffness, Shigley's Mechanical Engineering Design, example 8-4", () => {
  // 5/8-11 bolt, A_d 0.3068, A_t 0.226 in², shank and thread 0.75 in each, E 30 Mpsi; parts of 14 Mpsi, grip 1.5 in.
  // Printed: k_b 5.21, k_m 8.95 Mlbf/in, C 0.368 (three digits: ±0.3 %).
  const newtonsPerPound = 4.4482216152605
  const mpsi = (newtonsPerPound * 1e6) / 25.4 ** 2
  const mlbfPerInch = (newtonsPerPound * 1e6) / 25.4
  const half = lengthOf(0.75, 'in')
  const bolt = seriesResilience([
    { length: half, areaMm2: 0.3068 * 25.4 ** 2, modulusMpa: 30 * mpsi },
    { length: half, areaMm2: 0.226 * 25.4 ** 2, modulusMpa: 30 * mpsi },
  ])
  const parts = bookJoint('in', 0.625, [{ thickness: lengthOf(1.5, 'in'), modulusMpa: 14 * mpsi }])

  it('the bolt has 5.21, the parts 8.95 Mlbf/in, and the bolt takes 0.368 of a load', () => {
    const stiffness = 1 / bolt
    expect(Math.abs(stiffness / mlbfPerInch / 5.21 - 1)).toBeLessThan(0.003)
    expect(Math.abs(parts / mlbfPerInch / 8.95 - 1)).toBeLessThan(0.003)
    expect(Math.abs(stiffness / (stiffness + parts) / 0.368 - 1)).toBeLessThan(0.003)
  })

  it('17.3° bring that joint to 14.4 kip: by hand, 14.4 × (1/5.21 + 1/8.95) / 1000 × 11 × 360', () => {
    const thread = given(threadOf(lengthOf(0.625, 'in'), lengthOf(1 / 11, 'in')))
    const turn = turnForPreload(thread, newtons(14_400 * newtonsPerPound), bolt + 1 / parts)
    expect(Math.abs(turn - 17.3)).toBeLessThan(0.1)
  })
})

// The solutions manual to chapter 8 of the same book (Budynas and Nisbett, 8th edition), pages 213 and 221: steel over iron,
// so that the meeting place of the cones lies inside the iron. Printed to four digits: ±0.3 %.
describe('stiffness of parts of two materials, solutions to Shigley, chapter 8', () => {
  const steel = { thickness: millimetres(20), modulusMpa: 207_000 }
  const iron = (modulusMpa: number) => ({ thickness: millimetres(25), modulusMpa })

  it.each([
    ['M12, 20 mm of steel on 25 mm of iron (100 GPa)', 12, iron(100_000), 1379],
    ['M10, 20 mm of steel on 25 mm of iron (96 GPa)', 10, iron(96_000), 1057],
  ])('%s', (_, diameter, below, meganewtonsPerMetre) => {
    const stiffness = bookJoint('mm', diameter, [steel, below])
    expect(Math.abs(stiffness / 1000 / meganewtonsPerMetre - 1)).toBeLessThan(0.003)
  })

  it('an M12 bolt of 113 mm² over 30 mm and 84.3 mm² over 15 mm has 466.8 MN/m', () => {
    const resilience = seriesResilience([
      { length: millimetres(30), areaMm2: 113, modulusMpa: 207_000 },
      { length: millimetres(15), areaMm2: 84.3, modulusMpa: 207_000 },
    ])
    expect(Math.abs(1 / resilience / 1000 / 466.8 - 1)).toBeLessThan(0.001)
  })
})
