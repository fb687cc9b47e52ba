import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clampedResilience, elasticModuliMpa } from '../../../core/joint/index.ts'
import { millimetres } from '../../../core/quantity/index.ts'
import { m8 } from './workshop.ts'
import { checkProperty } from '../../property.ts'

const aluminium = (thicknessMm: number) => ({
  thickness: millimetres(thicknessMm),
  modulusMpa: elasticModuliMpa.aluminium,
})
const steel = (thicknessMm: number) => ({
  thickness: millimetres(thicknessMm),
  modulusMpa: elasticModuliMpa.steel,
})

describe('how clamped parts give way', () => {
  it('one thin ring is a plain ring: thickness over modulus and area', () => {
    // By hand: area between 11.63 and 9 mm = 42.61 mm²; 0.01 mm of it in aluminium 0.01 / (71 000 × 42.61) = 3.305e-9 mm/N.
    expect(clampedResilience(m8.bearing, [aluminium(0.01)], 'tapped-hole') * 1e9).toBeCloseTo(3.305, 1)
  })

  it('one part gives the same as the same part cut in two', () => {
    checkProperty(
      fc.property(fc.integer({ min: 1, max: 59 }), fc.constantFrom('nut', 'tapped-hole'), (cut, anchor) => {
        const whole = clampedResilience(m8.bearing, [aluminium(60)], anchor)
        const parts = clampedResilience(m8.bearing, [aluminium(cut), aluminium(60 - cut)], anchor)
        expect(Math.abs(parts / whole - 1)).toBeLessThan(1e-12)
      }),
    )
  })

  it('with a nut it does not matter which way up the joint lies', () => {
    const down = clampedResilience(m8.bearing, [steel(10), aluminium(30)], 'nut')
    const up = clampedResilience(m8.bearing, [aluminium(30), steel(10)], 'nut')
    expect(up).toBeCloseTo(down, 15)
  })

  it('into a tapped hole the part below the head matters most, where the cone is narrow', () => {
    const hardAbove = clampedResilience(m8.bearing, [steel(10), aluminium(10)], 'tapped-hole')
    const softAbove = clampedResilience(m8.bearing, [aluminium(10), steel(10)], 'tapped-hole')
    expect(softAbove).toBeGreaterThan(hardAbove)
  })

  it('two cones give as much as twice one cone of half the depth', () => {
    const nut = clampedResilience(m8.bearing, [aluminium(40)], 'nut')
    const half = clampedResilience(m8.bearing, [aluminium(20)], 'tapped-hole')
    expect(nut).toBeCloseTo(2 * half, 15)
  })
})
