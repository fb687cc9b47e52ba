import { describe, expect, it } from 'vitest'
import {
  degrees,
  newtonMetres,
  torqueOf,
  type Torque,
  type TorqueUnit,
} from '../../../../core/quantity/index.ts'
import type { Pass } from '../../../../core/engine/index.ts'
import {
  showWindow,
  suspectedUnit,
  verdictOf,
  windowOf,
  type PullWindow,
} from '../../../../core/tightening/index.ts'
import { Bench } from '../bench.ts'

const caps = new Bench('caps').procedure.passes
const torque = (target: Torque, least: Torque, most: Torque): PullWindow => ({
  kind: 'torque',
  target,
  least,
  most,
  tolerance: 'spec',
})
const read = (value: number, unit: TorqueUnit) => ({ typed: String(value), value, unit })

describe('the window of a pull', () => {
  it("has the spec's limits where the spec gives them", () => {
    expect(windowOf(caps[1]!, 'cap-1')).toEqual({
      kind: 'torque',
      target: 24,
      least: 22.8,
      most: 25.2,
      tolerance: 'spec',
    })
  })

  it('has a target of its own for a fastener that the pass treats otherwise', () => {
    expect(windowOf(caps[1]!, 'cap-4')).toMatchObject({ target: 12, tolerance: 'usual' })
  })

  it('is 4 % either way where the spec gives no limits (ISO 6789-1, type II class A): 40 is 38.4 to 41.6', () => {
    const window = windowOf(caps[3]!, 'cap-1')
    expect(window).toMatchObject({ kind: 'torque', target: 40, tolerance: 'usual' })
    const limits = window?.kind === 'torque' ? window : null
    expect(limits?.least).toBeCloseTo(38.4, 9)
    expect(limits?.most).toBeCloseTo(41.6, 9)
  })

  it('has an angle of its own for a fastener that the pass turns otherwise', () => {
    const pass: Pass = {
      kind: 'angle',
      order: 'all',
      target: degrees(60),
      others: [{ fasteners: ['cap-4'], target: degrees(45) }],
    }
    const targets = ['cap-1', 'cap-4', null].map((fastener) => windowOf(pass, fastener))
    expect(targets).toMatchObject([{ target: 60 }, { target: 45 }, { target: 60 }])
  })

  it('is 5° either way for an angle without limits (TM 5-3825-226-24, there for 120°)', () => {
    const pass: Pass = { kind: 'angle', order: 'all', target: degrees(120) }
    expect(windowOf(pass, 'cap-1')).toMatchObject({
      kind: 'angle',
      least: 115,
      most: 125,
      tolerance: 'usual',
    })
  })

  it('never asks for an angle below zero', () => {
    const pass: Pass = { kind: 'angle', order: 'all', target: degrees(3) }
    expect(windowOf(pass, 'cap-1')).toMatchObject({ least: 0, most: 8 })
  })

  it('keeps the one limit that the spec gives, and says that the other is a usual one', () => {
    const pass: Pass = { kind: 'angle', order: 'all', target: degrees(90), most: degrees(92) }
    expect(windowOf(pass, 'cap-1')).toMatchObject({ least: 85, most: 92, tolerance: 'usual' })
  })

  it('is not there for what is not read: by hand, an action', () => {
    expect(windowOf(caps[0]!, 'cap-1')).toBeNull()
    expect(windowOf(caps[2]!, null)).toBeNull()
  })
})

describe('a reading against its window', () => {
  const window = windowOf(caps[1]!, 'cap-1')!

  it('is within on both limits', () => {
    expect(verdictOf(window, 22.8)).toBe('within')
    expect(verdictOf(window, 25.2)).toBe('within')
  })

  it('is under and over a hair outside of them', () => {
    expect(verdictOf(window, 22.799)).toBe('under')
    expect(verdictOf(window, 25.201)).toBe('over')
  })

  it('is within at exactly 4 %: of 4.1 that is 4.264, where binary has 4.2639999999999995', () => {
    const usual = windowOf({ kind: 'torque', order: 'all', target: newtonMetres(4.1), others: [] }, 'cap-1')!
    expect(verdictOf(usual, 4.264)).toBe('within')
    expect(verdictOf(usual, 3.936)).toBe('within')
  })
})

describe('a suspected unit', () => {
  const window = windowOf(caps[1]!, 'cap-1')! // 22.8 to 25.2 N·m

  it('is lbf·in for 212 read on a scale of N·m: 212 lbf·in is 23.95 N·m', () => {
    expect(suspectedUnit(window, read(212, 'N·m'))).toBe('lbf·in')
  })

  it('is N·m for 24 read as lbf·ft, which would be 32.5 N·m', () => {
    expect(suspectedUnit(window, read(24, 'lbf·ft'))).toBe('N·m')
  })

  it('is the first of the bench’s units that explains it: 20 lbf·in is 2.3 N·m, as lbf·ft 27.1 and as kgf·m 196', () => {
    const wide = torque(newtonMetres(100), newtonMetres(25), newtonMetres(200))
    expect(suspectedUnit(wide, read(20, 'lbf·in'))).toBe('lbf·ft')
  })

  it('is none for a reading that is within, and none for one that no unit explains', () => {
    expect(suspectedUnit(window, read(24, 'N·m'))).toBeNull()
    expect(suspectedUnit(window, read(40, 'N·m'))).toBeNull()
  })
})

describe('a window as it is shown', () => {
  const set = (target: number, least: number, most: number) =>
    torque(torqueOf(target, 'lbf·ft'), torqueOf(least, 'lbf·ft'), torqueOf(most, 'lbf·ft'))

  it('is the printed numbers in the unit that they were printed in', () => {
    expect(showWindow(set(30, 27, 33), 'lbf·ft')).toEqual({ target: 30, least: 27, most: 33 })
  })

  it('is rounded inwards in another: 27 lbf·ft is 36.607 N·m, 33 is 44.742', () => {
    expect(showWindow(set(30, 27, 33), 'N·m')).toEqual({ target: 40.7, least: 36.7, most: 44.7 })
  })

  it('is rounded to the nearest where nothing would be left between the limits', () => {
    const narrow = torque(newtonMetres(24.05), newtonMetres(24.02), newtonMetres(24.08))
    expect(showWindow(narrow, 'N·m')).toEqual({ target: 24.1, least: 24, most: 24.1 })
  })

  it('is in degrees for an angle, whatever the wrench', () => {
    const angle = windowOf({ kind: 'angle', order: 'all', target: degrees(100) }, 'cap-1') as PullWindow
    expect(showWindow(angle, 'lbf·in')).toEqual({ target: 100, least: 95, most: 105 })
  })
})

describe('a window on a scale in any unit', () => {
  // 40 N·m by NIST SP 811: 29.5 lbf·ft, 354 lbf·in, 4.08 kgf·m, 407.9 kgf·cm, 400 dN·m, 5664.5 ozf·in; ± 4 N·m inwards.
  it.each([
    ['N·m', 40, 36, 44],
    ['lbf·ft', 29.5, 26.6, 32.4],
    ['lbf·in', 354, 319, 389],
    ['kgf·m', 4.08, 3.68, 4.48],
    ['kgf·cm', 408, 368, 448],
    ['dN·m', 400, 360, 440],
    ['ozf·in', 5664, 5099, 6230],
  ] as const)('in %s is %s, %s to %s', (unit, target, least, most) => {
    const window = torque(newtonMetres(40), newtonMetres(36), newtonMetres(44))
    expect(showWindow(window, unit)).toEqual({ target, least, most })
  })
})

describe('a window on a scale', () => {
  // 12.3456 N·m: 9.1056 lbf·ft, 109.27 lbf·in, 1.25890 kgf·m, 125.890 kgf·cm, 123.456 dN·m, 1748.3 ozf·in.
  it.each([
    ['N·m', 12.3],
    ['lbf·ft', 9.1],
    ['lbf·in', 109],
    ['kgf·m', 1.26],
    ['kgf·cm', 126],
    ['dN·m', 123],
    ['ozf·in', 1748],
  ] as const)('in %s has as many digits as the scale shows', (unit, shown) => {
    const [target, least, most] = [12.3456, 11, 13].map((value) => torqueOf(value, 'N·m'))
    expect(showWindow(torque(target!, least!, most!), unit).target).toBe(shown)
  })

  it('of an angle has tenths of a degree', () => {
    const turn: PullWindow = {
      kind: 'angle',
      target: degrees(33.333),
      least: degrees(30.01),
      most: degrees(36.66),
      tolerance: 'spec',
    }
    expect(showWindow(turn, 'N·m')).toEqual({ target: 33.3, least: 30.1, most: 36.6 })
  })
})
