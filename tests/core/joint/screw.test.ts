import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { preloadFromTorque, torqueSplit } from '../../../core/joint/index.ts'
import { newtonMetres } from '../../../core/quantity/index.ts'
import { m10, m8, nutFactor } from './workshop.ts'
import { checkProperty } from '../../property.ts'

const oiled = { thread: 0.12, head: 0.12 }

describe('torque and preload', () => {
  it('26.384 N·m on an M8 with friction of 0.12 give 20 kN', () => {
    // By hand: 20 000 N × (0.16 × 1.25 + 0.58 × 7.188 × 0.12 + 10.315 / 2 × 0.12) mm = 20 000 × 1.3192 N·mm.
    expect(preloadFromTorque({ ...m8, friction: oiled }, newtonMetres(26.384)) / 1000).toBeCloseTo(20, 2)
  })

  it('grow in proportion', () => {
    const preload = (torque: number) => preloadFromTorque({ ...m8, friction: oiled }, newtonMetres(torque))
    expect(preload(0)).toBe(0)
    expect(preload(36) / preload(12)).toBeCloseTo(3, 12)
  })

  it('more friction leaves less preload', () => {
    const preload = (friction: number) =>
      preloadFromTorque({ ...m8, friction: { thread: friction, head: friction } }, newtonMetres(24))
    expect(preload(0.08)).toBeGreaterThan(preload(0.12))
    expect(preload(0.12)).toBeGreaterThan(preload(0.24))
  })
})

describe('where a torque goes', () => {
  it('only a sixth or so of it stretches an oiled M8, nearly half turns under the head', () => {
    const split = torqueSplit({ ...m8, friction: oiled }, newtonMetres(24))
    expect(split.pitch / 24).toBeCloseTo(0.152, 3)
    expect(split.thread / 24).toBeCloseTo(0.379, 3)
    expect(split.head / 24).toBeCloseTo(0.469, 3)
  })

  it('the shares add up to the whole', () => {
    checkProperty(
      fc.property(fc.double({ min: 0.1, max: 300, noNaN: true }), (torque) => {
        const split = torqueSplit({ ...m10, friction: { thread: 0.1, head: 0.16 } }, newtonMetres(torque))
        expect(split.pitch + split.thread + split.head).toBeCloseTo(torque, 9)
      }),
    )
  })

  it('without friction all of it climbs the pitch', () => {
    const split = torqueSplit({ ...m8, friction: { thread: 0, head: 0 } }, newtonMetres(24))
    expect(split.pitch).toBeCloseTo(24, 9)
    expect([split.thread, split.head]).toEqual([0, 0])
  })
})

describe('the nut factor', () => {
  it('is about 0.2 for dry steel, common practice', () => {
    expect(nutFactor({ ...m10, friction: { thread: 0.15, head: 0.15 } })).toBeCloseTo(0.2, 2)
  })
})
