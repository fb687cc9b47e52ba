import { describe, expect, it } from 'vitest'
import { torqueEffect, torqueInputs } from '../../../core/joint/index.ts'
import { newtonMetres, type Torque } from '../../../core/quantity/index.ts'
import { groupOf, jointOf } from './groups.ts'
import { inputText } from './input-text.ts'

describe('what a torque does', () => {
  // VDI 2230 (2001 and later), M10 8.8, µ 0.12: 48 N·m give 29.6 kN and use 90 % of the yield point up.
  const effect = torqueEffect(jointOf(), { target: newtonMetres(48) })

  it('gives the preload of the table, within 1.2 %, and 90 % of yield', () => {
    expect(Math.abs(effect.preload.usual / 29_600 - 1)).toBeLessThan(0.012)
    expect(Math.abs(effect.ofYield.usual / 0.9 - 1)).toBeLessThan(0.012)
    expect(Math.abs(effect.yieldLoad / (29_600 / 0.9) - 1)).toBeLessThan(0.005)
  })

  it('lies between what the most and the least friction give: 0.16 and 0.08 for oiled threads', () => {
    // By hand, M/F = 0.24 + µ·(0.58·9.0257 + 12.815/2) mm: 2.103 at 0.16, 1.637 at 0.12, 1.171 at 0.08.
    expect(effect.preload.least / effect.preload.usual).toBeCloseTo(1.637 / 2.103, 3)
    expect(torqueEffect(jointOf(), { target: newtonMetres(30) }).preload.most).toBeCloseTo(
      30_000 / 1.1714,
      -1,
    )
  })

  it('has no upper bound where little friction takes it past yield: what it then holds is not known', () => {
    expect(effect.preload.most).toBeNull()
    expect(effect.ofProof.most).toBeNull()
    expect(effect.ofYield.most).toBeGreaterThan(1)
  })

  it('is a share of the proof load at each of its ends: 33.6 kN of an M10 of 8.8 (ISO 898-1: 33 700 N)', () => {
    const { preload, ofProof } = torqueEffect(jointOf(), { target: newtonMetres(30) })
    expect(ofProof.least).toBeCloseTo(preload.least / 33_634, 3)
    expect(ofProof.usual).toBeCloseTo(preload.usual / 33_634, 3)
    expect(ofProof.most).toBeCloseTo(preload.most! / 33_634, 3)
  })

  it('is taken over its limits: the lower one at the most friction, the upper one at the least', () => {
    const [target, least, most] = [30, 27, 33].map(newtonMetres) as [Torque, Torque, Torque]
    const wide = torqueEffect(jointOf(), { target, least, most })
    const narrow = torqueEffect(jointOf(), { target })
    expect(wide.preload.usual).toBe(narrow.preload.usual)
    expect(wide.preload.least / narrow.preload.least).toBeCloseTo(0.9, 9)
    expect(wide.preload.most! / narrow.preload.most!).toBeCloseTo(1.1, 9)
  })

  // By hand: 0.16·1.5 = 0.24, 0.58·9.0257·0.12 = 0.628, 12.815/2·0.12 = 0.769, together 1.637 mm.
  it('loses 85 % to friction: 38 % in the thread, 47 % under the head', () => {
    expect(effect.lostShare).toBeCloseTo(1 - 0.24 / 1.637, 3)
    expect(effect.split.thread / 48).toBeCloseTo(0.628 / 1.637, 3)
    expect(effect.split.head / 48).toBeCloseTo(0.769 / 1.637, 3)
  })

  it('is weighed against the proof load: 29.3 of 33.6 kN', () => {
    expect(effect.ofProof.usual).toBeCloseTo(29.32 / 33.63, 2)
  })

  it('clamps less with dry threads than with oiled ones', () => {
    const dry = torqueEffect(jointOf({ threadState: 'dry' }), { target: newtonMetres(48) })
    expect(dry.preload.usual).toBeLessThan(0.75 * effect.preload.usual)
  })

  it('is above 1 of yield where the bolt would not bear it', () => {
    expect(torqueEffect(jointOf(), { target: newtonMetres(70) }).ofYield.usual).toBeGreaterThan(1)
  })

  it('names everything it is made from, and where each comes from', () => {
    const group = groupOf()
    const inputs = torqueInputs(group, jointOf()).map(inputText)
    expect(inputs.map(({ name, value }) => `${name}: ${value}`).slice(0, 4)).toEqual([
      'Thread: M10×1.5',
      'Property class: 8.8: proof 580 MPa, yield 640 MPa',
      'Face under the head: Ø 14.63 mm with a hole of Ø 11 mm',
      'Friction: 0.12, between 0.08 and 0.16; the limits of the preload follow from that',
    ])
    for (const { source } of inputs) expect(source).not.toBe('')
  })
})
