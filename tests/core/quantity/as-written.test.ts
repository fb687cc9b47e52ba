import { describe, expect, it } from 'vitest'
import {
  inMillimetres,
  parseAngle,
  parseForce,
  parseLength,
  parseTemperature,
  parseTorque,
} from '../../../core/quantity/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'

const read = <Value>(outcome: Outcome<Value>): Value | string =>
  outcome.ok ? outcome.value : outcome.problem.code

describe('what is written as manuals and people write it', () => {
  it.each([
    ['1/2 in', 12.7],
    ['1 1/2 in', 38.1],
    ['1-1/2 in', 38.1],
    ['9/16 in', 14.2875],
    ['3/64 in', 1.190625],
  ])('%s is %d mm', (typed, mm) => {
    const length = parseLength(typed)
    expect(length.ok && inMillimetres(length.value)).toBe(mm)
  })

  it.each([
    ['1/3 in', 'a third is no exact decimal'],
    ['1/0 in', 'nothing is divided by nothing'],
    ['1/2/4 in', 'one fraction at most'],
  ])('%s is refused: %s', (typed) => {
    expect(parseLength(typed).ok).toBe(false)
  })

  it.each([
    ['1 234 N·m', 1234],
    ['1\u00a0234,5 Nm', 1234.5],
    ['12\u202f345 N·m', 12_345],
    ['24 N\u2219m', 24],
    ['240 dN·m', 24],
    ['100 kgf·cm', 9.80665],
    ['100 cm kg', null],
  ])('%s is %s N·m', (typed, newtonMetres) => {
    const torque = parseTorque(typed)
    if (newtonMetres === null) expect(torque.ok).toBe(true)
    else expect(torque.ok && torque.value).toBeCloseTo(newtonMetres, 9)
  })

  it.each(['12 34 N·m', '1 2345 N·m', '1234 567 N·m'])(
    '%s is refused: blanks stand between thousands',
    (typed) => {
      expect(parseTorque(typed).ok).toBe(false)
    },
  )

  it('ounces, and the ring above for a degree sign', () => {
    expect(read(parseTorque('16 oz in'))).toBeCloseTo(0.112984829, 9)
    expect(read(parseAngle('90\u02da'))).toBe(90)
    expect(read(parseTemperature('212 \u02daF'))).toBe(100)
    expect(read(parseForce('14.4 kip'))).toBeCloseTo(64_054.39, 2)
  })
})
