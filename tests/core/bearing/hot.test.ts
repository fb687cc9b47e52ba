import { describe, expect, it } from 'vitest'
import { exactly, hotClearance } from '../../../core/bearing/index.ts'
import { celsius } from '../../../core/quantity/index.ts'
import { mm, pumpMains, um } from './fits.ts'
import { lineOf } from '../../problem-line.ts'

const sizes = { bore: exactly(mm(56.01)), journal: exactly(mm(52)) }
const wall = { least: mm(1.986), most: mm(1.989) }
const walls = { upper: wall, lower: wall }

function hot(fit = pumpMains, temperature?: number) {
  const clearance = hotClearance(
    fit,
    'M1',
    walls,
    sizes,
    temperature === undefined ? undefined : celsius(temperature),
  )
  return clearance.ok ? clearance.value.nominal : lineOf(clearance.problem)
}

describe('hot clearance', () => {
  it('is the cold one at 20 °C: 56.010 − 52.000 − 2 × 1.9875 = 35 µm', () => {
    expect(hot(pumpMains, 20)).toBe(um(35))
  })

  it('opens in a light-alloy case, by the difference of the materials over the bore', () => {
    // At 100 °C, 80 K above: the case grows by 56.01 × 23.1e-6 × 80 = 103.5 µm, crank and walls, 55.975 mm of steel,
    // by 55.975 × 11.5e-6 × 80 = 51.5 µm. 35 + 103.5 − 51.5 = 87.0 µm.
    expect(hot()).toBeGreaterThan(um(86.9))
    expect(hot()).toBeLessThan(um(87.1))
  })

  it('hardly changes when all is of one material', () => {
    const warm = { ...pumpMains.warm!, housingExpansion: 11.5 }
    // 35 µm × 11.5e-6 × 80 is 0.03 µm.
    expect(hot({ ...pumpMains, warm })).toBe(um(35.032))
  })

  it('is not told without the materials, nor at 900 °C', () => {
    const { warm: _, ...unnamed } = pumpMains
    expect(hot(unnamed)).toBe('expansion-unknown: place=M1')
    expect(hot(pumpMains, 900)).toMatch(/^temperature-not-sensible: of=oil, temperature=900 °C/)
  })
})
