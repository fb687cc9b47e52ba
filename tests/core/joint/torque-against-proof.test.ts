import { describe, expect, it } from 'vitest'
import {
  plausibleFriction,
  runsFree,
  strengthOf,
  torqueAgainstProof,
  torqueEffect,
} from '../../../core/joint/index.ts'
import { newtonMetres, torqueOf, type Torque } from '../../../core/quantity/index.ts'
import { jointOf } from './groups.ts'
import { valueOf, m10, m6, m8 } from './workshop.ts'

/** A bolt of a class with threads of which no more is known. */
const boltOf = (bolt: typeof m8, propertyClass: string) => ({
  ...bolt,
  strength: valueOf(strengthOf(propertyClass, bolt.thread)),
  friction: plausibleFriction,
  prevailing: runsFree,
})
const verdict = (bolt: typeof m8, propertyClass: string, torque: Torque) =>
  torqueAgainstProof(boltOf(bolt, propertyClass), { target: torque }).verdict

describe('a torque against the proof load', () => {
  // Torques that VDI 2230 tabulates for µ 0.10 and 0.12.
  it.each([
    ['M6', '8.8', 9.0, m6],
    ['M6', '8.8', 10.1, m6],
    ['M8', '8.8', 24.6, m8],
    ['M8', '10.9', 36.1, m8],
    ['M8', '12.9', 42.2, m8],
    ['M10', '8.8', 48, m10],
    ['M10', '10.9', 71, m10],
    ['M10', '12.9', 83, m10],
  ])('%s of class %s at its tabulated %d N·m is plausible', (_, propertyClass, torque, bolt) => {
    expect(verdict(bolt, propertyClass, newtonMetres(torque))).toBe('plausible')
  })

  it('inch-pounds written down as foot-pounds overload the thread at any plausible friction', () => {
    expect(verdict(m6, '8.8', torqueOf(85, 'lbf·in'))).toBe('plausible')
    expect(verdict(m6, '8.8', torqueOf(85, 'lbf·ft'))).toBe('overload')
  })

  it('foot-pounds written down as inch-pounds clamp next to nothing', () => {
    expect(verdict(m8, '8.8', torqueOf(18, 'lbf·ft'))).toBe('plausible')
    expect(verdict(m8, '8.8', torqueOf(18, 'lbf·in'))).toBe('next-to-no-clamp')
  })

  it('a plausible torque written twelve times too small or too large is caught', () => {
    for (const torque of [15, 20, 24.6]) {
      expect(verdict(m8, '8.8', newtonMetres(torque))).toBe('plausible')
      expect(verdict(m8, '8.8', newtonMetres(torque / 12))).toBe('next-to-no-clamp')
      expect(verdict(m8, '8.8', newtonMetres(torque * 12))).toBe('overload')
    }
  })

  it('the torque of class 10.9 or 12.9 on a bolt of class 8.8 is a likely overload', () => {
    expect(verdict(m8, '8.8', newtonMetres(36.1))).toBe('likely-overload')
    expect(verdict(m8, '8.8', newtonMetres(42.2))).toBe('likely-overload')
  })

  it('a sump screw at 10 N·m is no cause for alarm', () => {
    expect(verdict(m8, '8.8', newtonMetres(10))).toBe('plausible')
  })

  it('no torque clamps nothing', () => {
    expect(verdict(m8, '8.8', newtonMetres(0))).toBe('next-to-no-clamp')
  })

  it('says between what preloads the truth lies', () => {
    // By hand for an M8: 24 000 N·mm / (0.2 + µ × (0.58 × 7.188 + 5.1575)) mm = 24 000 / (0.2 + 9.3266·µ).
    const found = torqueAgainstProof(boltOf(m8, '8.8'), { target: newtonMetres(24) })
    expect(found.preloadAtLeastFriction / 1000).toBeCloseTo(25.37, 2)
    expect(found.preloadAtUsualFriction / 1000).toBeCloseTo(15.01, 2)
    expect(found.preloadAtMostFriction / 1000).toBeCloseTo(9.84, 2)
    expect(found.proofLoad / 1000).toBeCloseTo(21.2, 1)
    expect(plausibleFriction).toEqual({ least: 0.08, usual: 0.15, most: 0.24 })
  })

  it('is weighed by its upper limit as well as by its target', () => {
    const bolt = boltOf(m8, '8.8')
    const weighed = (most: number) =>
      torqueAgainstProof(bolt, { target: newtonMetres(24), most: newtonMetres(most) }).verdict
    expect(weighed(26)).toBe('plausible')
    // Usual friction 0.15: 36 000 / (0.2 + 1.399) mm = 22.5 kN of 21.2.
    expect(weighed(36)).toBe('likely-overload')
    // Most friction 0.24: 54 000 / (0.2 + 2.238) mm = 22.1 kN of 21.2.
    expect(weighed(54)).toBe('overload')
  })

  it('is weighed by the friction of its own threads: oiled M10 8.8 at 66 N·m is past its yield point', () => {
    // VDI 2230, µ 0.12: 48 N·m use up 90 % of the yield point, so 66 N·m use up 123 %.
    const oiled = jointOf({ threadState: 'oiled' })
    expect(torqueAgainstProof(oiled, { target: newtonMetres(66) }).verdict).toBe('likely-overload')
    expect(torqueEffect(oiled, { target: newtonMetres(66) }).ofYield.usual).toBeCloseTo(1.23, 1)
    expect(torqueAgainstProof(jointOf({ threadState: 'dry' }), { target: newtonMetres(66) }).verdict).toBe(
      'plausible',
    )
  })

  it('and what explains it agree at every torque: what is doubted yields or passes proof at the usual friction', () => {
    let doubted = 0
    for (const threadState of ['oiled', 'dry', 'sealant', 'thread-lock'])
      for (let torque = 5; torque < 120; torque += 1) {
        const joint = jointOf({ threadState })
        const { verdict } = torqueAgainstProof(joint, { target: newtonMetres(torque) })
        const { ofYield, ofProof } = torqueEffect(joint, { target: newtonMetres(torque) })
        const past = ofYield.usual > 1 || ofProof.usual > 1
        expect(past, `${threadState}, ${torque} N·m`).toBe(
          verdict === 'overload' || verdict === 'likely-overload',
        )
        if (past) doubted += 1
      }
    expect(doubted).toBeGreaterThan(100)
  })
})
