import { describe, expect, it } from 'vitest'
import { combinedUncertainty, guardedLimits } from '../../../../core/bearing/index.ts'
import { um } from '../fits.ts'

const limits = { least: um(24), most: um(48) }

describe('limits and a gauge that is sure to ± 3 µm', () => {
  it('are drawn in by it at both ends', () => {
    expect(guardedLimits(limits, um(3))).toEqual({ ok: true, value: { least: um(27), most: um(45) } })
  })

  it('leave one single size when the gauge takes all of the room, and nothing beyond', () => {
    expect(guardedLimits(limits, um(12))).toEqual({ ok: true, value: { least: um(36), most: um(36) } })
    expect(guardedLimits(limits, um(12.001)).ok).toBe(false)
  })
})

describe('the uncertainty of a clearance', () => {
  it('is the root of the sum of squares of those it is made of: 3 and 4 µm make 5', () => {
    expect(combinedUncertainty(um(3), um(4))).toBe(um(5))
  })

  it('is never less than the greatest of them', () => {
    expect(combinedUncertainty(um(3), um(0.001))).toBeGreaterThan(um(3))
  })
})
