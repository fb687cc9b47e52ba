import { describe, expect, it } from 'vitest'
import { atReference, exactly, hotClearance } from '../../core/bearing/index.ts'
import { celsius, lengthIn, lengthOf } from '../../core/quantity/index.ts'
import type { Fit } from '../../core/engine/index.ts'
import { bare } from './bare-fit.ts'

describe('20 °C, ISO 1', () => {
  it('a steel part that reads 60.000 mm at 30 °C is 59.9931 mm (11.5 × 10⁻⁶/K, NIST J. Res. 99, 31)', () => {
    const size = atReference(lengthOf(60, 'mm'), { expansion: 11.5, temperature: celsius(30) })
    expect(lengthIn(size, 'mm')).toBeCloseTo(59.9931, 4)
  })
})

describe('sizes of warm parts, and of what they were measured with', () => {
  it('a steel rod that reads 500.035 mm at 23.7 °C is 500.013 mm (11.7 × 10⁻⁶/K; National Physical Laboratory, FAQ of 2010)', () => {
    const size = atReference(lengthOf(500.035, 'mm'), { expansion: 11.7, temperature: celsius(23.7) })
    expect(Math.abs(lengthIn(size, 'mm') - 500.013)).toBeLessThan(0.0005)
  })

  // With the expansions of NIST J. Res. 99, 31, found in print (23.1 aluminium, 11.5 steel); what they come to by hand.
  it('a bore in aluminium that a steel gauge reads as 64.000 mm, both at 30 °C, is 63.9926 mm', () => {
    const aluminium = { expansion: 23.1, temperature: celsius(30) }
    const steel = { expansion: 11.5, temperature: celsius(30) }
    expect(lengthIn(atReference(lengthOf(64, 'mm'), aluminium, steel), 'mm')).toBeCloseTo(63.9926, 4)
  })

  it.each([
    [100, 0.10944],
    [20, 0.05],
    [-20, 0.02028],
  ])(
    'a steel crank of 59.95 mm in aluminium of 64 mm with 2 mm walls has, at %d °C, %d mm',
    (at, clearance) => {
      const warm = { housingExpansion: 23.1, journalExpansion: 11.5, shellExpansion: 11.5 }
      const fit: Fit = { ...bare, warm: { ...warm, oilTemperature: celsius(at) } }
      const wall = exactly(lengthOf(2, 'mm'))
      const sizes = { bore: exactly(lengthOf(64, 'mm')), journal: exactly(lengthOf(59.95, 'mm')) }
      const hot = hotClearance(fit, 'M1', { upper: wall, lower: wall }, sizes)
      expect(hot.ok && lengthIn(hot.value.nominal, 'mm')).toBeCloseTo(clearance, 5)
    },
  )
})

/**
 * A worked answer for machinists (algebra.com, metalworking, question 624821): an aluminium piston of 4 in in a bore of 4.003 in of cast
 * iron, 70 to 160 °F, 12.4 and 6.55 × 10⁻⁶ per °F, leaves 4.00536 − 4.004465 = 0.000895 in. A bore without shells.
 */
describe('the clearance of a piston by its growth', () => {
  it('is 0.000895 in hot where it is 0.003 in cold, as far as the answer is rounded', () => {
    const perKelvin = (perFahrenheit: number) => perFahrenheit * 1.8
    const warm = {
      ...{
        housingExpansion: perKelvin(6.55),
        journalExpansion: perKelvin(12.4),
        shellExpansion: perKelvin(6.55),
      },
      // 90 °F are 50 K above the 20 °C at which sizes hold.
      oilTemperature: celsius(70),
    }
    const fit: Fit = { ...bare, warm }
    const none = exactly(lengthOf(0, 'in'))
    const sizes = { bore: exactly(lengthOf(4.003, 'in')), journal: exactly(lengthOf(4, 'in')) }
    const hot = hotClearance(fit, 'M1', { upper: none, lower: none }, sizes)
    expect(hot.ok && Math.abs(lengthIn(hot.value.nominal, 'in') - 0.000895)).toBeLessThan(0.00001)
  })
})
