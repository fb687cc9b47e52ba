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
import { valueOf } from '../core/joint/workshop.ts'
import { jointOf } from '../core/joint/groups.ts'

const newtonsPerPound = 4.4482216152605
const mpsi = (newtonsPerPound * 1e6) / 25.4 ** 2
const mlbfPerInch = (newtonsPerPound * 1e6) / 25.4

/** The book's joints: two parts, the cone from 1.5·d, the hole as large as the bolt. */
function bookJoint(unit: LengthUnit, diameter: number, layers: readonly Layer[]) {
  const bearing = valueOf(bearingFace(lengthOf(1.5 * diameter, unit), lengthOf(diameter, unit)))
  return 1 / clampedResilience(bearing, layers, 'nut')
}

describe("joint stiffness, Shigley's Mechanical Engineering Design, example 8-4", () => {
  // 5/8-11 bolt, A_d 0.3068, A_t 0.226 in², shank and thread 0.75 in each, E 30 Mpsi; parts of 14 Mpsi, grip 1.5 in.
  // Printed: k_b 5.21, k_m 8.95 Mlbf/in, C 0.368 (three digits: ±0.3 %).
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
    const thread = valueOf(threadOf(lengthOf(0.625, 'in'), lengthOf(1 / 11, 'in')))
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

// A cap screw goes into a tapped hole, and the book lets the second cone begin half a diameter down the thread. Each cone by
// itself is what this program takes for a tapped hole; both together are its joint with a nut.
describe("cap screws into tapped holes, Shigley's Mechanical Engineering Design", () => {
  /** One cone under the head, in the book's proportions. Layers as [thickness in, Mpsi], printed in Mlbf/in. */
  const cone = (diameter: number, ...layers: readonly (readonly [number, number])[]) =>
    1 /
    clampedResilience(
      valueOf(bearingFace(lengthOf(1.5 * diameter, 'in'), lengthOf(diameter, 'in'))),
      layers.map(([inches, modulus]) => ({
        thickness: lengthOf(inches, 'in'),
        modulusMpa: modulus * mpsi,
      })),
      'tapped-hole',
    ) /
    mlbfPerInch

  it.each([
    // Example 8-5, 5/8-11 through a washer and a steel cover into cast iron.
    ['steel over the upper half, example 8-5', 0.625, 0.5, 30, 46.46],
    ['iron from the thread up, example 8-5', 0.625, 0.3125, 16, 32.39],
    // The solutions manual, 8th edition, problem 8-25, 1/2-13.
    ['steel over the upper half, problem 8-25', 0.5, 0.4225, 30, 36.14],
    ['iron from the thread up, problem 8-25', 0.5, 0.25, 14.5, 23.49],
    ['steel, problem 8-24', 0.5, 0.5, 30, 33.3],
  ])('one cone of %s', (_, diameter, thickness, modulus, printed) => {
    expect(Math.abs(cone(diameter, [thickness, modulus]) / printed - 1)).toBeLessThan(0.003)
  })

  it('a cone through iron and then steel gives way as its two frusta do, 32.39 and 197.43, example 8-5', () => {
    const together = 1 / (1 / 32.39 + 1 / 197.43)
    expect(Math.abs(cone(0.625, [0.3125, 16], [0.1875, 30]) / together - 1)).toBeLessThan(0.003)
  })

  it('example 8-5: screw 6.78, parts 17.40 Mlbf/in, and the screw takes 0.280 of a load', () => {
    const screw = seriesResilience([
      { length: lengthOf(1, 'in'), areaMm2: 0.226 * 25.4 ** 2, modulusMpa: 30 * mpsi },
    ])
    const parts = bookJoint('in', 0.625, [
      { thickness: lengthOf(0.6875, 'in'), modulusMpa: 30 * mpsi },
      { thickness: lengthOf(0.3125, 'in'), modulusMpa: 16 * mpsi },
    ])
    expect(Math.abs(1 / screw / mlbfPerInch / 6.78 - 1)).toBeLessThan(0.003)
    expect(Math.abs(parts / mlbfPerInch / 17.4 - 1)).toBeLessThan(0.003)
    expect(Math.abs(1 / screw / (1 / screw + parts) / 0.28 - 1)).toBeLessThan(0.003)
  })

  // The manual prints frusta of 5316, 15 620 and 3887 MN/m, and adds the middle one up as 55 620: its 2158 MN/m is a misprint.
  it('solutions manual, problem 8-23: an M12 has 744 MN/m, steel over iron what its three frusta come to', () => {
    const screw = seriesResilience([
      { length: millimetres(10), areaMm2: 113, modulusMpa: 207_000 },
      { length: millimetres(16), areaMm2: 84.3, modulusMpa: 207_000 },
    ])
    const parts = bookJoint('mm', 12, [
      { thickness: millimetres(20), modulusMpa: 207_000 },
      { thickness: millimetres(6), modulusMpa: 100_000 },
    ])
    expect(Math.abs(1 / screw / 1000 / 744 - 1)).toBeLessThan(0.003)
    expect(Math.abs((parts / 1000) * (1 / 5316 + 1 / 15_620 + 1 / 3887) - 1)).toBeLessThan(0.003)
  })
})

describe('what a group of a spec clamps, by the frusta of the same solutions manual, pages 213, 214 and 221', () => {
  // Face of 1.5·d, hole of d; one cone through the part. The book's moduli are this program's: 207 and 100 GPa.
  it.each([
    [12, 20, 'steel', 4470],
    [12, 22.5, 'cast-iron', 2074],
    [12, 13, 'steel', 5316],
    [12, 6, 'cast-iron', 3887],
    [10, 20, 'steel', 3503],
  ] as const)('M%d through %d mm of %s: %d MN/m', (diameter, grip, clamped, meganewtonsPerMetre) => {
    const { clampedMmPerN } = jointOf({
      thread: { diameter: `${diameter} mm`, pitch: diameter === 12 ? '1.75 mm' : '1.5 mm' },
      headFace: { outer: `${1.5 * diameter} mm`, hole: `${diameter} mm` },
      acrossFlats: `${1.5 * diameter} mm`,
      grip: `${grip} mm`,
      clamped,
    })
    expect(Math.abs(1 / clampedMmPerN / 1000 / meganewtonsPerMetre - 1)).toBeLessThan(0.003)
  })

  // The substitute lengths of head, engaged thread and tapped part are those of VDI 2230 part 1, 5.1.1, which were found in
  // print. No worked example with all of them was found: the sum is by hand, from sections of ISO 724.
  it('an M12×1.75 over 45 mm of iron stretches 3.28 nm for each newton', () => {
    // ISO 4014 has 2·12 + 6 = 30 mm of thread, of which 12 mm are engaged: 27 mm of shank, 18 mm of free thread. Sections of
    // 113.10 and 76.25 mm²: (6 + 27)/(113.10 × 207) + (18 + 6)/(76.25 × 207) + 3.96/(113.10 × 100) = 1.410 + 1.521 + 0.350.
    const { boltMmPerN } = jointOf({
      thread: { diameter: '12 mm', pitch: '1.75 mm' },
      headFace: { outer: '18 mm', hole: '12 mm' },
      acrossFlats: '18 mm',
      grip: '45 mm',
      clamped: 'cast-iron',
    })
    expect(boltMmPerN * 1e6).toBeCloseTo(3.281, 2)
  })
})
