import { describe, expect, it } from 'vitest'
import { torqueEffect, torqueInputs } from '../../../core/joint/index.ts'
import { newtonMetres } from '../../../core/quantity/index.ts'
import { groupOf, jointOf } from './groups.ts'

describe('what a torque does', () => {
  // VDI 2230 (2001 and later), M10 8.8, µ 0.12: 48 N·m give 29.6 kN and use 90 % of the yield point up.
  const effect = torqueEffect(jointOf(), newtonMetres(48))

  it('gives the preload of the table, within 1.2 %, and 90 % of yield', () => {
    expect(Math.abs(effect.preload.usual / 29_600 - 1)).toBeLessThan(0.012)
    expect(Math.abs(effect.ofYield / 0.9 - 1)).toBeLessThan(0.012)
    expect(Math.abs(effect.yieldLoad / (29_600 / 0.9) - 1)).toBeLessThan(0.005)
  })

  it('scatters by a quarter either way when oiled, and by more than a third when dry', () => {
    expect(effect.preload.least / effect.preload.usual).toBeCloseTo(0.75, 12)
    expect(effect.preload.most / effect.preload.usual).toBeCloseTo(1.25, 12)
    expect(torqueEffect(jointOf({ threadState: 'dry' }), newtonMetres(48)).scatter).toBe(0.35)
  })

  // By hand: 0.16·1.5 = 0.24, 0.58·9.0257·0.12 = 0.628, 12.815/2·0.12 = 0.769, together 1.637 mm.
  it('loses 85 % to friction: 38 % in the thread, 47 % under the head', () => {
    expect(effect.lostShare).toBeCloseTo(1 - 0.24 / 1.637, 3)
    expect(effect.split.thread / 48).toBeCloseTo(0.628 / 1.637, 3)
    expect(effect.split.head / 48).toBeCloseTo(0.769 / 1.637, 3)
  })

  it('is weighed against the proof load: 29.3 of 33.6 kN', () => {
    expect(effect.ofProof.usual).toBeCloseTo(29.32 / 33.63, 2)
    expect(effect.ofProof.most).toBeGreaterThan(1)
  })

  it('clamps less with dry threads than with oiled ones', () => {
    const dry = torqueEffect(jointOf({ threadState: 'dry' }), newtonMetres(48))
    expect(dry.preload.usual).toBeLessThan(0.75 * effect.preload.usual)
  })

  it('is above 1 of yield where the bolt would not bear it', () => {
    expect(torqueEffect(jointOf(), newtonMetres(70)).ofYield).toBeGreaterThan(1)
  })

  it('names everything it is made from, and where each comes from', () => {
    const group = groupOf()
    const inputs = torqueInputs(group, jointOf())
    expect(inputs.map(({ name, value }) => `${name}: ${value}`).slice(0, 5)).toEqual([
      'Thread: M10×1.5',
      'Property class: 8.8: proof 580 MPa, yield 640 MPa',
      'Face under the head: Ø 14.63 mm with a hole of Ø 11 mm',
      'Friction: 0.12, between 0.08 and 0.16',
      'Scatter of preload at one torque: ±25 %',
    ])
    for (const { source } of inputs) expect(source).not.toBe('')
  })
})
