import { describe, expect, it } from 'vitest'
import { assemblyPreload, strengthOf, tighteningStress } from '../../../core/joint/index.ts'
import { newtons } from '../../../core/quantity/index.ts'
import { valueOf, m8 } from './workshop.ts'

const strength = valueOf(strengthOf('8.8', m8.thread))

describe('stress while tightening', () => {
  it('18.6 kN in an M8 at friction 0.12 use up nine tenths of what class 8.8 bears', () => {
    // The preload is the one that VDI 2230 tabulates for this; 0.9 × 640 MPa = 576 MPa, ±0.5 % for its three digits.
    const stress = tighteningStress(m8.thread, newtons(18_600), 0.12)
    expect(Math.abs(stress.equivalentMpa / 576 - 1)).toBeLessThan(0.005)
  })

  it('is tension over the stress area, and more with the torsion', () => {
    const stress = tighteningStress(m8.thread, newtons(18_600), 0.12)
    expect(stress.tensionMpa).toBeCloseTo(18_600 / 36.609, 1)
    expect(stress.equivalentMpa).toBeGreaterThan(stress.tensionMpa)
  })

  it('has torsion even without friction, from the pitch', () => {
    expect(tighteningStress(m8.thread, newtons(10_000), 0).torsionMpa).toBeGreaterThan(0)
  })
})

describe('the preload that tightening may reach', () => {
  it('is lower the more the thread rubs', () => {
    expect(assemblyPreload(m8.thread, strength, 0.14)).toBeLessThan(assemblyPreload(m8.thread, strength, 0.1))
  })

  it('uses up nine tenths of the yield point unless told, and all of it at 1', () => {
    const usual = tighteningStress(m8.thread, assemblyPreload(m8.thread, strength, 0.1), 0.1)
    const all = tighteningStress(m8.thread, assemblyPreload(m8.thread, strength, 0.1, 1), 0.1)
    expect(usual.equivalentMpa).toBeCloseTo(576, 9)
    expect(all.equivalentMpa).toBeCloseTo(640, 9)
  })
})
