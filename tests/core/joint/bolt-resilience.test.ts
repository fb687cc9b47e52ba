import { describe, expect, it } from 'vitest'
import { boltResilience, elasticModuliMpa, seriesResilience } from '../../../core/joint/index.ts'
import { millimetres } from '../../../core/quantity/index.ts'
import { m8 } from './workshop.ts'

const bolt = {
  thread: m8.thread,
  shank: millimetres(40),
  freeThread: millimetres(10),
  anchor: 'nut',
  modulusMpa: 207_000,
  anchorModulusMpa: 207_000,
} as const

describe('how a bolt stretches', () => {
  it('100 mm of 50 mm² steel give 9.66 nm for each newton', () => {
    // By hand: 100 / (207 000 × 50) = 9.662e-6 mm.
    const rod = { length: millimetres(100), areaMm2: 50, modulusMpa: 207_000 }
    expect(seriesResilience([rod])).toBeCloseTo(9.662e-6, 9)
    expect(seriesResilience([rod, rod])).toBeCloseTo(2 * 9.662e-6, 8)
    expect(seriesResilience([])).toBe(0)
  })

  it('an M8 with 40 mm of shank and 10 mm of free thread in a nut gives 6.6 nm for each newton', () => {
    // By hand: nominal section 50.27 mm², root section 32.84 mm²; head 4, shank 40 and nut 3.2 mm of the one, free
    // thread 10 and engaged thread 4 mm of the other: (47.2 / 50.27 + 14 / 32.84) / 207 000 = 6.596e-6 mm.
    expect(boltResilience(bolt) * 1e6).toBeCloseTo(6.596, 2)
  })

  it('in a tapped hole in aluminium it gives 7.0 nm', () => {
    // By hand: (44 / 50.27 + 14 / 32.84) / 207 000 as above without the nut, and 2.64 / (50.27 × 71 000) = 7.028e-6 mm.
    const tapped = {
      ...bolt,
      anchor: 'tapped-hole',
      anchorModulusMpa: elasticModuliMpa.aluminium,
    } as const
    expect(boltResilience(tapped) * 1e6).toBeCloseTo(7.028, 2)
  })

  it('thread stretches more than shank of the same length', () => {
    const threaded = { ...bolt, shank: millimetres(0), freeThread: millimetres(50) }
    expect(boltResilience(threaded)).toBeGreaterThan(boltResilience(bolt))
  })
})
