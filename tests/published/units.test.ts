import { evaluate, unit as measure } from 'mathjs'
import { describe, expect, it } from 'vitest'
import {
  lengthIn,
  lengthOf,
  lengthUnits,
  parseForce,
  torqueIn,
  torqueOf,
  torqueUnits,
} from '../../core/quantity/index.ts'

/** Relative, as the printed factors have 16 significant digits. */
const closely = 1e-12

describe('unit factors, NIST SP 811 (2008), appendix B.8', () => {
  // From the definitions there: pound 0.453 592 37 kg, standard gravity 9.806 65 m/s², inch 0.0254 m.
  const poundForce = 0.45359237 * 9.80665
  it.each([
    ['lbf·ft', poundForce * 12 * 0.0254],
    ['lbf·in', poundForce * 0.0254],
    ['kgf·m', 9.80665],
    ['kgf·cm', 9.80665 / 100],
    ['ozf·in', (poundForce / 16) * 0.0254],
  ] as const)('1 %s is %d N·m', (unit, newtonMetres) => {
    expect(Math.abs(torqueOf(1, unit) / newtonMetres - 1)).toBeLessThan(closely)
    expect(Math.abs(torqueIn(torqueOf(1, 'N·m'), unit) * newtonMetres - 1)).toBeLessThan(closely)
  })

  it('an inch is 25.4 mm and a thousandth of it 25.4 µm, exactly', () => {
    expect(lengthIn(lengthOf(1, 'in'), 'mm')).toBe(25.4)
    expect(lengthIn(lengthOf(1, 'thou'), 'µm')).toBe(25.4)
  })

  it('a pound-force is 4.448 221 615 260 5 N, exactly', () => {
    expect(parseForce('1 lbf')).toEqual({ ok: true, value: 4.4482216152605 })
    expect(parseForce('14.4 kip')).toEqual({ ok: true, value: 14.4 * 4448.2216152605 })
  })
})

describe('units by mathjs, as a second opinion', () => {
  const torqueNames = {
    'N·m': 'N m',
    'lbf·ft': 'lbf ft',
    'lbf·in': 'lbf in',
    'kgf·m': 'kgf m',
    'kgf·cm': 'kgf cm',
    'dN·m': 'dN m',
    // A sixteenth of a pound-force, as the avoirdupois ounce is of the pound.
    'ozf·in': 'lbf inch / 16',
  } as const
  const lengthNames = { mm: 'mm', in: 'in', µm: 'um', thou: 'mil' } as const

  it.each(torqueUnits)('agree on 1, 17.7 and 340 %s in every other unit of torque', (from) => {
    for (const value of [1, 17.7, 340]) {
      for (const to of torqueUnits) {
        const theirs: number = evaluate(`(${value} * (1 ${torqueNames[from]})) / (1 ${torqueNames[to]})`)
        expect(Math.abs(torqueIn(torqueOf(value, from), to) / theirs - 1)).toBeLessThan(closely)
      }
    }
  })

  it.each(lengthUnits)('agree on 2.4409 %s, to the nanometre', (from) => {
    const theirs = measure(2.4409, lengthNames[from]).toNumber('nm')
    expect(Math.abs(lengthOf(2.4409, from) - theirs)).toBeLessThanOrEqual(0.5 + 1e-6)
  })
})
