import { describe, expect, it } from 'vitest'
import { amountsIn, celsius, parseTemperature } from '../../../core/quantity/index.ts'
import { en } from '../../../core/words/index.ts'

const shown = amountsIn(en)

describe('a temperature', () => {
  it.each([
    ['100 °C', 100],
    ['100°C', 100],
    ['-5 C', -5],
    ['212 °F', 100],
    ['32 °F', 0],
    ['-40 °F', -40],
    ['-273.15 °C', -273.15],
  ])('reads %j as %d °C', (typed, value) => {
    const read = parseTemperature(typed)
    expect(read.ok && read.value).toBeCloseTo(value, 10)
  })

  it.each([
    ['100', 'unit-missing'],
    ['373 K', 'unit-unknown'],
    ['-274 °C', 'number-out-of-range'],
    ['-460 °F', 'number-out-of-range'],
  ])('refuses %j: %s', (typed, code) => {
    expect(parseTemperature(typed)).toMatchObject({ ok: false, problem: { code } })
  })

  it('cannot be made below absolute zero', () => {
    expect(celsius(-273.15)).toBe(-273.15)
    expect(() => celsius(-273.16)).toThrow(RangeError)
    expect(() => celsius(NaN)).toThrow(RangeError)
  })

  it('prints with a place only where one is needed', () => {
    expect(shown.temperature(celsius(100))).toBe('100 °C')
    expect(shown.temperature(celsius(20.5))).toBe('20.5 °C')
  })
})
