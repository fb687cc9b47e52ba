import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { preloadDeviation, tighteningFactor } from '../../../core/joint/index.ts'
import { checkProperty } from '../../property.ts'

describe('scatter of preload', () => {
  it('a third more or less is twice as much at most as at least', () => {
    expect(tighteningFactor(1 / 3)).toBeCloseTo(2, 12)
    expect(preloadDeviation(2)).toBeCloseTo(1 / 3, 12)
  })

  it('none is a factor of one', () => {
    expect(tighteningFactor(0)).toBe(1)
    expect(preloadDeviation(1)).toBe(0)
  })

  it('goes there and back', () => {
    checkProperty(
      fc.property(fc.double({ min: 0, max: 0.95, noNaN: true }), (deviation) => {
        expect(preloadDeviation(tighteningFactor(deviation))).toBeCloseTo(deviation, 12)
      }),
    )
  })
})
