import { describe, expect, it } from 'vitest'
import { workingLoadEffect } from '../../../core/joint/index.ts'
import { newtons } from '../../../core/quantity/index.ts'

// The bolt gives way three times as much as the parts: Φ is a quarter where the load comes in under the head.
const joint = { boltMmPerN: 3e-6, clampedMmPerN: 1e-6 }
const preload = { least: newtons(6_000), usual: newtons(12_000) }

function under(forceN: number, introduction = 1) {
  return workingLoadEffect(joint, preload, { force: newtons(forceN), introduction })
}

describe('a load that pulls a tightened joint apart', () => {
  it('is felt by the fastener by its load factor, less where it comes in nearer to the joint (VDI 2230)', () => {
    expect(under(8_000).onFastener).toBe(2_000)
    expect(under(8_000, 0.5)).toMatchObject({ loadFactor: 0.125, onFastener: 1_000 })
    expect(under(8_000, 0).onFastener).toBe(0)
  })

  it('takes the rest off the clamp', () => {
    expect(under(4_000).clampLeft).toEqual({ least: 3_000, usual: 9_000 })
  })

  it('opens the joint where it takes all of it: 6 kN at 8 kN, 12 kN at 16 kN', () => {
    expect(under(4_000).opensAt).toEqual({ least: 8_000, usual: 16_000 })
    expect(under(7_999).opens).toBe('never')
    expect(under(8_000).opens).toBe('at-least-preload')
    expect(under(15_999).opens).toBe('at-least-preload')
    expect(under(16_000).opens).toBe('at-usual-preload')
    expect(under(20_000).clampLeft).toEqual({ least: 0, usual: 0 })
  })
})
