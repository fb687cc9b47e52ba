import { describe, expect, it } from 'vitest'
import { textWidth } from '../../../../core/layout/index.ts'

describe('the estimated width of a text', () => {
  // Measured in Chromium with the font itself, at a size whose capitals are 67.2 px high; within 1 %.
  it.each([
    ['24 N·m', 'bold', 340],
    ['NOSE', 'bold', 267],
    ['M3', 'bold', 146],
    ['38 µm', 'regular', 289],
    ['bore 2', 'regular', 282],
  ] as const)('of “%s” in %s is %d px for capitals of 67.2 px', (text, weight, px) => {
    expect(Math.abs(textWidth(text, 67.2, weight) / px - 1)).toBeLessThan(0.01)
  })

  it('grows with the capitals', () => {
    expect(textWidth('R', 20, 'bold')).toBeCloseTo(2 * textWidth('R', 10, 'bold'), 9)
  })

  it('takes a character it does not know to be a wide one, so that no room is too small', () => {
    expect(textWidth('Ж', 10, 'regular')).toBeGreaterThan(textWidth('M', 10, 'regular'))
    expect(textWidth('', 10, 'regular')).toBe(0)
  })
})
