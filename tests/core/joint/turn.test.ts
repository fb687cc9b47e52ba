import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { preloadAfterTurn, preloadGain, turnForPreload } from '../../../core/joint/index.ts'
import { degrees, newtons } from '../../../core/quantity/index.ts'
import { m10 } from './workshop.ts'
import { checkProperty } from '../../property.ts'

// An M10×1.5 that, with its joint, gives 10 nm for each newton.
const joint = { thread: m10.thread, resilienceMmPerN: 10e-6, yieldLoad: newtons(50_000) }

describe('preload by turning', () => {
  it('a quarter turn of 1.5 mm pitch takes up 0.375 mm: 37.5 kN at 10 nm for each newton', () => {
    expect(preloadGain(m10.thread, degrees(90), 10e-6)).toBeCloseTo(37_500, 6)
  })

  it('there and back', () => {
    checkProperty(
      fc.property(fc.double({ min: 0.1, max: 360, noNaN: true }), (turn) => {
        const gain = preloadGain(m10.thread, degrees(turn), 10e-6)
        expect(turnForPreload(m10.thread, gain, 10e-6)).toBeCloseTo(turn, 9)
      }),
    )
  })

  it('adds to the snug preload', () => {
    expect(preloadAfterTurn(joint, newtons(8_000), degrees(90))).toEqual({
      state: 'elastic',
      preload: 45_500,
    })
  })

  it('stops where the screw yields, so that twice the turn is not twice the clamp', () => {
    expect(preloadAfterTurn(joint, newtons(8_000), degrees(120))).toEqual({
      state: 'yielding',
      preload: 50_000,
    })
    expect(preloadAfterTurn(joint, newtons(8_000), degrees(240))).toEqual({
      state: 'yielding',
      preload: 50_000,
    })
  })

  it('counts the yield point itself as yielding', () => {
    expect(preloadAfterTurn(joint, newtons(50_000), degrees(0)).state).toBe('yielding')
  })
})
