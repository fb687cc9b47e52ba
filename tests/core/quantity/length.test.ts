import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  amountsIn,
  difference,
  half,
  inMicrometres,
  inMillimetres,
  lengthIn,
  lengthOf,
  lengthUnits,
  millimetres,
  nanometres,
  parseLength,
  sum,
} from '../../../core/quantity/index.ts'
import { en } from '../../../core/words/index.ts'
import { checkProperty } from '../../property.ts'

const shown = amountsIn(en)

const anyLength = fc.integer({ min: -2_000_000_000, max: 2_000_000_000 }).map(nanometres)
const anyUnit = fc.constantFrom(...lengthUnits)

describe('a length', () => {
  it('is a whole number of nanometres', () => {
    expect(millimetres(62.001)).toBe(62_001_000)
    expect(lengthOf(0.0001, 'in')).toBe(2_540)
    expect(inMillimetres(nanometres(61_998_860))).toBe(61.99886)
    expect(inMicrometres(nanometres(38_000))).toBe(38)
  })

  it('cannot be made of a fraction of a nanometre or of no number', () => {
    expect(() => nanometres(0.5)).toThrow(RangeError)
    expect(() => nanometres(2 ** 53)).toThrow(RangeError)
    expect(() => nanometres(NaN)).toThrow(RangeError)
    expect(() => millimetres(Infinity)).toThrow(RangeError)
  })

  it('rounds millimetres half away from zero', () => {
    expect(millimetres(0.0000005)).toBe(1)
    expect(millimetres(-0.0000005)).toBe(-1)
    expect(millimetres(0.00000049)).toBe(0)
  })

  it('adds, subtracts and halves without loss', () => {
    // Bore 56.012, journal 52.000, two walls of 1.993 and 1.989 mm: 30 µm are left for the oil.
    const walls = sum(millimetres(1.993), millimetres(1.989))
    expect(difference(difference(millimetres(56.012), millimetres(52)), walls)).toBe(30_000)
    expect(sum()).toBe(0)
    expect(half(millimetres(0.25))).toBe(125_000)
    expect([half(nanometres(3)), half(nanometres(-3))]).toEqual([2, -2])
  })

  it('survives a trip through any unit', () => {
    checkProperty(
      fc.property(anyLength, anyUnit, (length, unit) => {
        expect(lengthOf(lengthIn(length, unit), unit)).toBe(length)
      }),
    )
  })
})

describe('a length as it is typed', () => {
  it.each([
    ['2.4409 in', 61_998_860],
    ['2.4409in', 61_998_860],
    ['2.4409"', 61_998_860],
    ['0.001 mm', 1_000],
    ['62,001 MM', 62_001_000],
    ['38 µm', 38_000],
    ['38 \u03bcm', 38_000],
    ['38 um', 38_000],
    ['1.5 thou', 38_100],
    ['-0.5 thou', -12_700],
  ])('reads %j as %d nm', (typed, length) => {
    expect(parseLength(typed)).toEqual({ ok: true, value: length })
  })

  it('takes a bare number in the unit that is said to be meant, and a written unit before that', () => {
    expect(parseLength('62.001', 'mm')).toEqual({ ok: true, value: 62_001_000 })
    expect(parseLength('2.4409 in', 'mm')).toEqual({ ok: true, value: 61_998_860 })
  })

  it('is exact on the digits, where binary fractions are not', () => {
    // 0.0000015 mm is 1.5 nm, half way; 0.00000149999999999999999999 mm is below half way by less than binary can tell.
    expect(parseLength('0.0000015 mm')).toEqual({ ok: true, value: 2 })
    expect(parseLength('-0.0000015 mm')).toEqual({ ok: true, value: -2 })
    expect(parseLength('0.00000149999999999999999999 mm')).toEqual({ ok: true, value: 1 })
  })

  it.each([
    ['62.001', 'unit-missing'],
    ['62.001 cm', 'unit-unknown'],
    ['1e3 mm', 'unit-unknown'],
    ['mm', 'number-unreadable'],
    ['- mm', 'number-unreadable'],
    ['', 'number-missing'],
    ['1,234.5 mm', 'number-ambiguous'],
    ['10000000000 mm', 'number-out-of-range'],
  ])('refuses %j: %s', (typed, code) => {
    expect(parseLength(typed)).toMatchObject({ ok: false, problem: { code } })
  })

  it('reads back what was printed, to half the last place', () => {
    checkProperty(
      fc.property(anyLength, anyUnit, (length, unit) => {
        expect(parseLength(shown.length(length, unit, 8))).toEqual({ ok: true, value: length })
        const lastPlace = { mm: 1_000, in: 2_540, µm: 1_000, thou: 2_540 }[unit]
        const read = parseLength(shown.length(length, unit))
        expect(read.ok && Math.abs(read.value - length) <= lastPlace / 2).toBe(true)
      }),
    )
  })
})

describe('a printed length', () => {
  it('has the places that a gauge in that unit shows', () => {
    expect(shown.length(millimetres(62), 'mm')).toBe('62.000 mm')
    expect(shown.length(nanometres(61_998_860), 'in')).toBe('2.4409 in')
    expect(shown.length(nanometres(38_100), 'thou')).toBe('1.5 thou')
    expect(shown.length(millimetres(-0.0385), 'µm', 1)).toBe('\u221238.5 µm')
  })

  it('shows a clearance in whole micrometres, a half going up', () => {
    expect(shown.micrometres(nanometres(38_000))).toBe('38 µm')
    expect(shown.micrometres(nanometres(37_500))).toBe('38 µm')
  })
})
