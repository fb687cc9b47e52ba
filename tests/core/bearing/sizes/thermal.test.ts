import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  atReference,
  partAtTemperature,
  sensibleTemperature,
  atTemperature,
} from '../../../../core/bearing/index.ts'
import { celsius, nanometres } from '../../../../core/quantity/index.ts'
import { mm, pumpMains } from '../fits.ts'
import { checkProperty } from '../../../property.ts'
import { lineOf } from '../../../problem-line.ts'

describe('a part that was measured warm', () => {
  it('is smaller at 20 °C: 60 mm of aluminium shrink by 13.9 µm in 10 K', () => {
    // 60 mm × 23.1e-6 × 10 = 0.01386 mm
    expect(atReference(mm(60), { expansion: 23.1, temperature: celsius(30) })).toBeCloseTo(mm(59.98614), -2)
  })

  it('is as large as it reads at 20 °C', () => {
    expect(atReference(mm(60), { expansion: 23.1, temperature: celsius(20) })).toBe(mm(60))
  })

  it('reads true on a steel gauge of the same warmth when it is steel itself', () => {
    const steel = { expansion: 11.5, temperature: celsius(35) }
    expect(atReference(mm(60), steel, steel)).toBe(mm(60))
  })

  it('reads small on a gauge that is warmer', () => {
    // The gauge grew by 60 mm × 11.5e-6 × 10 = 0.0069 mm, so it reads the part that much too small.
    const read = atReference(
      mm(60),
      { expansion: 11.5, temperature: celsius(20) },
      { expansion: 11.5, temperature: celsius(30) },
    )
    expect(read).toBe(mm(60.0069))
  })

  it('comes back to the same size when it is atTemperature again', () => {
    const size = fc.integer({ min: 1_000_000, max: 200_000_000 }).map(nanometres)
    const body = fc.record({
      expansion: fc.double({ min: 1, max: 30, noNaN: true }),
      temperature: fc.integer({ min: -10, max: 50 }).map(celsius),
    })
    checkProperty(
      fc.property(size, body, (size, body) => {
        expect(Math.abs(atTemperature(atReference(size, body), body) - size)).toBeLessThanOrEqual(1)
      }),
    )
  })
})

describe('a temperature', () => {
  const readTemperature = (t: number, of: 'measuring' | 'oil') => {
    const temperature = sensibleTemperature(celsius(t), of)
    return temperature.ok ? temperature.value : lineOf(temperature.problem)
  }

  it('is taken where people measure and oil runs', () => {
    expect([
      readTemperature(-10, 'measuring'),
      readTemperature(50, 'measuring'),
      readTemperature(200, 'oil'),
    ]).toEqual([-10, 50, 200])
  })

  it('of 900 °C is refused', () => {
    expect(readTemperature(900, 'measuring')).toBe(
      'temperature-not-sensible: of=measuring, temperature=900 °C, least=-10 °C, most=50 °C',
    )
    expect(readTemperature(900, 'oil')).toBe(
      'temperature-not-sensible: of=oil, temperature=900 °C, least=-40 °C, most=200 °C',
    )
    expect(readTemperature(51, 'measuring')).toMatch(
      /^temperature-not-sensible: of=measuring, temperature=51 °C/,
    )
  })
})

describe('a part of a fit on the bench', () => {
  it('grows as the spec says of its material', () => {
    expect(partAtTemperature(pumpMains, 'M1', 'housing', celsius(28))).toEqual({
      ok: true,
      value: { expansion: 23.1, temperature: 28 },
    })
  })

  it('must be at 20 °C where the spec names no material', () => {
    const { warm: _, ...unnamed } = pumpMains
    expect(partAtTemperature(unnamed, 'M1', 'housing', celsius(20)).ok).toBe(true)
    const body = partAtTemperature(unnamed, 'M1', 'housing', celsius(21))
    expect(body.ok ? '' : lineOf(body.problem)).toBe('expansion-unknown: place=M1')
  })
})
