import { describe, expect, it } from 'vitest'
import { tighteningFactor } from '../../../core/joint/index.ts'

describe('scatter of preload', () => {
  it('a third more or less is twice as much at most as at least', () => {
    expect(tighteningFactor(1 / 3)).toBeCloseTo(2, 12)
  })

  it('none is a factor of one', () => {
    expect(tighteningFactor(0)).toBe(1)
  })
})
