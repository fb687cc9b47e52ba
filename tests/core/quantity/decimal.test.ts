import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { formatNumber, parseNumber, parseReading } from '../../../core/quantity/index.ts'
import { checkProperty } from '../../property.ts'

describe('a number as it is typed', () => {
  it.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['  24 ', 24],
    ['.0015', 0.0015],
    ['5.', 5],
    ['+3', 3],
    ['-0.02', -0.02],
    ['−0.02', -0.02],
    ['007', 7],
  ])('reads %j as %d', (typed, value) => {
    expect(parseNumber(typed)).toEqual({ ok: true, value })
  })

  it('takes one comma as the decimal mark of a micrometer reading, never as a thousands mark', () => {
    expect(parseNumber('62,000')).toEqual({ ok: true, value: 62 })
  })

  it('has no minus zero', () => {
    expect(parseNumber('-0')).toEqual({ ok: true, value: 0 })
  })

  it.each(['1,234.5', '1.234,5', '1,234,567', '1.2.3'])('refuses %j as ambiguous', (typed) => {
    expect(parseNumber(typed)).toMatchObject({ ok: false, problem: { code: 'number-ambiguous' } })
  })

  it.each(['', ' ', '\t\n'])('says that nothing was typed for %j', (typed) => {
    expect(parseNumber(typed)).toMatchObject({ ok: false, problem: { code: 'number-missing' } })
  })

  it.each([
    'abc',
    '1e3',
    '1e999',
    'NaN',
    'Infinity',
    '0x1F',
    '-',
    '+',
    '.',
    ',',
    '1 234',
    '12.5mm',
    '--1',
    '١٢',
    '1_000',
  ])('refuses %j as no number', (typed) => {
    expect(parseNumber(typed)).toMatchObject({ ok: false, problem: { code: 'number-unreadable' } })
  })

  it('refuses more than 30 digits, as from a key that stuck', () => {
    expect(parseNumber('9'.repeat(30))).toMatchObject({ ok: true })
    expect(parseNumber('9'.repeat(31))).toMatchObject({ ok: false, problem: { code: 'number-out-of-range' } })
    expect(parseNumber(`0.${'0'.repeat(400)}1`)).toMatchObject({ ok: false })
  })

  it('reads back what was printed', () => {
    checkProperty(
      fc.property(
        fc.integer({ min: -9_999_999, max: 9_999_999 }),
        fc.integer({ min: 0, max: 5 }),
        (digits, places) => {
          const value = Number(`${digits}e-${places}`) + 0
          expect(parseNumber(formatNumber(value, places))).toEqual({ ok: true, value })
          expect(parseNumber(formatNumber(value, places).replace('.', ','))).toEqual({ ok: true, value })
        },
      ),
    )
  })

  it('never throws, and never gives a number that is not finite', () => {
    checkProperty(
      fc.property(fc.string(), (typed) => {
        const read = parseNumber(typed)
        expect(read.ok ? Number.isFinite(read.value) : sentenceOf(read.problem).length > 0).toBe(true)
      }),
    )
  })
})

describe('a reading', () => {
  it('is zero or more', () => {
    expect(parseReading('0')).toEqual({ ok: true, value: 0 })
    expect(parseReading('12,5')).toEqual({ ok: true, value: 12.5 })
  })

  it('is refused below zero, in words that repeat what was typed', () => {
    const read = parseReading(' -0.01 ')
    expect(read).toMatchObject({ ok: false, problem: { code: 'number-negative', facts: { typed: '-0.01' } } })
    if (!read.ok) expect(sentenceOf(read.problem)).toContain('“-0.01”')
  })

  it('is refused for the same faults as a number', () => {
    expect(parseReading('abc')).toEqual(parseNumber('abc'))
  })
})
