import { describe, expect, it } from 'vitest'
import { judgeLimits } from '../../core/builds/index.ts'
import type { Limits, MeasuredKind } from '../../core/engine/index.ts'
import { lengthIn, lengthOf, parseTemperature } from '../../core/quantity/index.ts'

/** Limits in inches as a manual prints them: of new parts, and to which they may wear. */
function judged(
  what: MeasuredKind,
  [least, most]: readonly [number | null, number],
  worn: number,
  read: number,
) {
  const inches = (value: number) => lengthOf(value, 'in')
  const limits: Limits = { ...(least !== null && { least: inches(least) }), most: inches(most) }
  const measure = {
    id: 'a',
    name: 'A',
    what,
    at: [],
    where: '',
    new: limits,
    service: { most: inches(worn) },
  }
  return judgeLimits(measure, inches(read))
}

// TM 5-4320-300-14, p. 6-84: 0.0031 to 0.0068 in with new parts, at most 0.010 in with used ones.
describe('piston to liner, TM 5-4320-300-14', () => {
  it.each([
    [0.003, 'outside'],
    [0.0031, 'new'],
    [0.0068, 'new'],
    [0.0069, 'service'],
    [0.01, 'service'],
    [0.0101, 'outside'],
  ])('%d in is %s', (read, verdict) => {
    expect(judged('piston-clearance', [0.0031, 0.0068], 0.01, read)).toBe(verdict)
  })
})

// TM 55-1905-219-14-4, table of specifications: skirt to liner 0.0045 to 0.0083 in, limit 0.0120 in.
describe('piston skirt to liner, TM 55-1905-219-14-4', () => {
  it.each([
    [0.0044, 'outside'],
    [0.0083, 'new'],
    [0.012, 'service'],
    [0.0121, 'outside'],
  ])('%d in is %s', (read, verdict) => {
    expect(judged('piston-clearance', [0.0045, 0.0083], 0.012, read)).toBe(verdict)
  })
})

// TM 9-2815-202-34, p. 645 of its copy: side clearance between rods 0.0080 to 0.0160 in, limit not printed beside it.
// TM 5-6115-584-34, table 1-2: rod side clearance 0.0020 to 0.0160 in, limit 0.0160 in: new and worn are one limit.
describe('side clearance of rods, TM 5-6115-584-34', () => {
  it.each([
    [0.0019, 'outside'],
    [0.002, 'new'],
    [0.016, 'new'],
    [0.0161, 'outside'],
  ])('%d in is %s', (read, verdict) => {
    expect(judged('rod-side', [0.002, 0.016], 0.016, read)).toBe(verdict)
  })

  // TM 5-3820-256-24-5, section 5: at most 0.46 mm (0.018 in).
  it('0.018 in is 0.46 mm', () => {
    expect(lengthIn(lengthOf(0.018, 'in'), 'mm').toFixed(2)).toBe('0.46')
  })
})

// TM 55-1905-219-14-4: run-out of the crank on its journals, total indicator reading, at No. 2 and 6 0.0020 in, at No. 3 and 5
// 0.0040 in; it has no least.
describe('run-out of a crank, TM 55-1905-219-14-4', () => {
  it.each([
    [0.002, 0, 'new'],
    [0.002, 0.002, 'new'],
    [0.002, 0.0021, 'outside'],
    [0.004, 0.004, 'new'],
    [0.004, 0.0041, 'outside'],
  ])('at most %d in: %d in is %s', (most, read, verdict) => {
    expect(judged('run-out', [null, most], most, read)).toBe(verdict)
  })
})

describe('a piston that is warmed for its pin, TM 9-6115-604-34, p. 9-54', () => {
  it('at or below 210 °F, which is 99 °C', () => {
    const warm = parseTemperature('210 °F')
    expect(warm.ok && Math.round(warm.value)).toBe(99)
  })
})
