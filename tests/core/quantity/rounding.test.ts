import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatNumber, roundHalfAway } from '../../../core/quantity/index.ts'
import { checkProperty } from '../../property.ts'

describe('rounding half away from zero', () => {
  it.each([
    [2.5, 0, 3],
    [-2.5, 0, -3],
    [2.4999, 0, 2],
    [1.005, 2, 1.01],
    [-1.005, 2, -1.01],
    [0.285, 2, 0.29],
    [8.345, 2, 8.35],
    [24, 1, 24],
    [0, 3, 0],
  ])('takes %d to %d decimals as %d', (value, decimals, rounded) => {
    expect(roundHalfAway(value, decimals)).toBe(rounded)
  })

  it('takes a value that two conversions have bent by a hair as the value that was meant', () => {
    expect(roundHalfAway(24.499999999999996)).toBe(25)
  })

  it('gives no minus zero', () => {
    expect(Object.is(roundHalfAway(-0.2), 0)).toBe(true)
    expect(formatNumber(-0.2, 0)).toBe('0')
  })

  it('leaves very large and very small numbers in order', () => {
    expect(roundHalfAway(1e21, 2)).toBe(1e21)
    expect(roundHalfAway(1e-12, 3)).toBe(0)
  })

  it('is the same distance either side of zero, and never moves a value by more than half a place', () => {
    checkProperty(
      fc.property(
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 6 }),
        (value, decimals) => {
          const rounded = roundHalfAway(value, decimals)
          expect(roundHalfAway(-value, decimals) + rounded).toBe(0)
          expect(Math.abs(rounded - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9)
          expect(roundHalfAway(rounded, decimals)).toBe(rounded)
        },
      ),
    )
  })
})

describe('a printed number', () => {
  it('keeps the zeros that say how well it is known, and has the true minus sign', () => {
    expect(formatNumber(62, 3)).toBe('62.000')
    expect(formatNumber(-0.0125, 3)).toBe('\u22120.013')
  })
})
