import { describe, expect, it } from 'vitest'
import { workingLoadEffect } from '../../core/joint/index.ts'
import { newtons } from '../../core/quantity/index.ts'

/** A joint of which the bolt takes a share C of a load, as Shigley's Mechanical Engineering Design has it, and its load. */
function joint(constant: number, preloadN: number, loadN: number) {
  return workingLoadEffect(
    { boltMmPerN: 1 - constant, clampedMmPerN: constant },
    { least: newtons(preloadN), usual: newtons(preloadN) },
    { force: newtons(loadN), introduction: 1 },
  )
}

// Factors are of three digits: ±0.3 %.
describe("a load on a tightened joint, solutions to Shigley's Mechanical Engineering Design, chapter 8", () => {
  it('problem 8-37, M30 of 8.8, C 0.33, 252.45 kN of preload, 80 kN: parts at 4.71 times the load', () => {
    const { opensAt, opens } = joint(0.33, 252_450, 80_000)
    expect(Math.abs(opensAt.usual / 80_000 / 4.71 - 1)).toBeLessThan(0.003)
    expect(opens).toBe('never')
  })

  it.each([
    // Problem 8-22, C 0.253, and 8-23, C 0.256; the bolt reaches its proof load of 600 MPa on 84.3 mm² at 4.73 and 5.84 times the load.
    [0.253, 10_600, 4.73],
    [0.256, 8_480, 5.84],
  ])('C %d, 37.9 kN of preload, %d N: proof at %d times the load', (constant, load, factor) => {
    const { onFastener } = joint(constant, 37_900, load * factor)
    expect(Math.abs((37_900 + onFastener) / (600 * 84.3) - 1)).toBeLessThan(0.003)
  })

  // Five bolts of 4 Mlbf/in on parts of 12 Mlbf/in, 10 000 lbf of preload and 40 000 lbf on all five: a published exercise. The
  // bolt gets a quarter of 8000 lbf; 6000 lbf go off the clamp.
  it('a quarter of the load goes to a bolt that is a third as stiff as its parts', () => {
    const { loadFactor, onFastener, clampLeft } = workingLoadEffect(
      { boltMmPerN: 1 / 4, clampedMmPerN: 1 / 12 },
      { least: newtons(10_000), usual: newtons(10_000) },
      { force: newtons(8_000), introduction: 1 },
    )
    expect(loadFactor).toBeCloseTo(0.25, 12)
    expect(onFastener).toBeCloseTo(2_000, 9)
    expect(clampLeft.usual).toBeCloseTo(4_000, 9)
  })
})
