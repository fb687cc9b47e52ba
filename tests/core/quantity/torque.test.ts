import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  amountsIn,
  newtonMetres,
  parseTorque,
  torqueIn,
  torqueOf,
  torqueUnits,
} from '../../../core/quantity/index.ts'
import { en } from '../../../core/words/index.ts'
import { checkProperty } from '../../property.ts'
import { lineOf } from '../../problem-line.ts'

const shown = amountsIn(en)

const anyUnit = fc.constantFrom(...torqueUnits)

describe('a torque', () => {
  it('survives a trip through any unit to one part in 10¹²', () => {
    checkProperty(
      fc.property(fc.double({ min: 0.001, max: 5000, noNaN: true }), anyUnit, (value, unit) => {
        expect(Math.abs(torqueIn(torqueOf(value, unit), unit) / value - 1)).toBeLessThan(1e-12)
      }),
    )
  })

  it('is twelve times as many inch-pounds as foot-pounds', () => {
    expect(torqueIn(torqueOf(10, 'lbf·ft'), 'lbf·in')).toBeCloseTo(120, 10)
  })

  it('cannot be made of no number', () => {
    expect(() => newtonMetres(NaN)).toThrow(RangeError)
    expect(() => torqueOf(Infinity, 'lbf·ft')).toThrow(RangeError)
  })
})

describe('a torque as it is typed', () => {
  it.each([
    '24 N·m',
    '24 Nm',
    '24Nm',
    '24 N.m',
    '24 N m',
    '24 nm',
    '24 N⋅m',
    '24 N-m',
    '24.0 N·m',
    '24,0 Nm',
  ])('reads %j as 24 N·m', (typed) => {
    expect(parseTorque(typed)).toEqual({ ok: true, value: 24 })
  })

  it.each([
    '18 lbf·ft',
    '18 lbf ft',
    '18 ft·lb',
    '18 ft-lb',
    '18 ft-lbs',
    '18 ft.lbf',
    '18 LB-FT',
    '18 ft.-lb.',
  ])('reads %j as 18 foot-pounds', (typed) => {
    expect(parseTorque(typed)).toEqual({ ok: true, value: torqueOf(18, 'lbf·ft') })
  })

  it.each(['100 lbf·in', '100 in-lb', '100 lbf.in', '100 in lbs'])('reads %j as 100 inch-pounds', (typed) => {
    expect(parseTorque(typed)).toEqual({ ok: true, value: torqueOf(100, 'lbf·in') })
  })

  it.each(['2,5 kgf m', '2.5 kgf·m', '2.5 kg-m', '2.5 mkgf'])(
    'reads %j as 2.5 kilogram-force metres',
    (typed) => {
      expect(parseTorque(typed)).toEqual({ ok: true, value: torqueOf(2.5, 'kgf·m') })
    },
  )

  it('takes a bare number in the unit that is said to be meant', () => {
    expect(parseTorque('18', 'lbf·ft')).toEqual(parseTorque('18 lbf·ft'))
  })

  it.each([
    ['24', 'unit-missing'],
    ['24 N', 'unit-unknown'],
    ['24 mN·m', 'unit-unknown'],
    ['24 lb', 'unit-unknown'],
    ['-24 N·m', 'number-negative'],
    ['N·m', 'number-unreadable'],
    ['', 'number-missing'],
  ])('refuses %j: %s', (typed, code) => {
    expect(parseTorque(typed)).toMatchObject({ ok: false, problem: { code } })
  })

  it('names the units to choose from when none was typed', () => {
    const read = parseTorque('24')
    if (read.ok) throw new Error('a torque without a unit was read')
    for (const unit of torqueUnits) expect(lineOf(read.problem)).toContain(unit)
  })

  it('reads back what was printed, to half the last place', () => {
    checkProperty(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), anyUnit, (value, unit) => {
        const read = parseTorque(shown.torque(torqueOf(value, unit), unit, 4))
        expect(read.ok && Math.abs(torqueIn(read.value, unit) - value) < 0.000051).toBe(true)
      }),
    )
  })
})

describe('a printed torque', () => {
  it('has no more places than the wrench can be set to', () => {
    expect(shown.torque(newtonMetres(24), 'N·m')).toBe('24 N·m')
    expect(shown.torque(newtonMetres(24.46), 'N·m')).toBe('24.5 N·m')
    expect(shown.torque(newtonMetres(24), 'lbf·ft')).toBe('17.7 lbf·ft')
    expect(shown.torque(newtonMetres(24), 'lbf·in')).toBe('212 lbf·in')
    expect(shown.torque(newtonMetres(24), 'kgf·m')).toBe('2.45 kgf·m')
    expect(shown.torque(torqueOf(100, 'lbf·in'), 'lbf·in')).toBe('100 lbf·in')
  })

  it('has exactly as many places as are asked for', () => {
    expect(shown.torque(newtonMetres(24), 'N·m', 2)).toBe('24.00 N·m')
    expect(shown.torque(newtonMetres(24), 'lbf·ft', 0)).toBe('18 lbf·ft')
  })

  it('shows the number alone for a dial that carries its unit elsewhere', () => {
    expect(shown.torque(newtonMetres(110), 'N·m')).toBe('110 N·m')
  })
})
