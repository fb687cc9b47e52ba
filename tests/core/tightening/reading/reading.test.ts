import { describe, expect, it } from 'vitest'
import type { Reading } from '../../../../core/tightening/index.ts'
import { lineOf } from '../../../problem-line.ts'
import { Bench, pull } from '../bench.ts'

/** Bolt 1 of the caps at its first torque: 22.8 to 25.2 N·m. */
function atTorque(): Bench {
  const bench = Bench.started()
  bench.pullsNext(4)
  return bench
}

/** Rod bolt R1 at its angle: 57 to 63°. */
function atAngle(): Bench {
  const bench = Bench.started('rods')
  bench.pullsNext(2)
  return bench
}

const verdictOf = (bench: Bench, typed: string, unit: Reading['unit']) => {
  bench.does(pull(bench.next!, [typed, unit]))
  const { reading, verdict } = bench.run!.pulls.at(-1)!
  return { reading, verdict }
}
const refused = (bench: Bench, typed: string, unit: Reading['unit']) =>
  lineOf(bench.refusal(pull(bench.next!, [typed, unit])))

describe('a torque reading', () => {
  it('is kept as typed, with its value and unit', () => {
    expect(verdictOf(atTorque(), ' 24,5 ', 'N·m')).toEqual({
      reading: { typed: ' 24,5 ', value: 24.5, unit: 'N·m' },
      verdict: 'within',
    })
  })

  it('may be in any unit of torque: 18 lbf·ft is 24.4 N·m, 210 lbf·in is 23.7, 2.45 kgf·m is 24.0', () => {
    expect(verdictOf(atTorque(), '18', 'lbf·ft').verdict).toBe('within')
    expect(verdictOf(atTorque(), '210', 'lbf·in').verdict).toBe('within')
    expect(verdictOf(atTorque(), '2.45', 'kgf·m').verdict).toBe('within')
  })

  it('that brings its own unit, as gauges do, is in that unit', () => {
    expect(verdictOf(atTorque(), '212 in-lb', 'N·m')).toEqual({
      reading: { typed: '212 in-lb', value: 212, unit: 'lbf·in' },
      verdict: 'within',
    })
  })

  it('below the least is under, above the most is over', () => {
    expect(verdictOf(atTorque(), '22.7', 'N·m').verdict).toBe('under')
    expect(verdictOf(atTorque(), '25.3', 'N·m').verdict).toBe('over')
  })

  it('of nothing at all is a reading, and under', () => {
    expect(verdictOf(atTorque(), '0', 'N·m').verdict).toBe('under')
  })

  it.each([
    ['', 'number-missing'],
    ['abc', 'number-unreadable: typed=abc'],
    ['-5', 'number-negative: typed=-5'],
    ['1e999', 'unit-unknown: typed=1e999, units=N·m lbf·ft lbf·in kgf·m kgf·cm dN·m ozf·in'],
    ['1,234.5', 'number-ambiguous: typed=1,234.5'],
    ['24 °', 'unit-unknown: typed=24 °, units=N·m lbf·ft lbf·in kgf·m kgf·cm dN·m ozf·in'],
  ])('of “%s” is refused', (typed, sentence) => {
    const bench = atTorque()
    expect(refused(bench, typed, 'N·m')).toBe(sentence)
    expect(bench.run?.pulls).toHaveLength(4)
  })

  it('is not given in degrees', () => {
    expect(refused(atTorque(), '24', '°')).toBe('reading-of-other-kind: wanted=torque, unit=°')
  })
})

describe('an angle reading', () => {
  it('is in degrees', () => {
    expect(verdictOf(atAngle(), '60°', '°')).toEqual({
      reading: { typed: '60°', value: 60, unit: '°' },
      verdict: 'within',
    })
    expect(verdictOf(atAngle(), '63', '°').verdict).toBe('within')
    expect(verdictOf(atAngle(), '63,5', '°').verdict).toBe('over')
  })

  it('is not given in a unit of torque', () => {
    expect(refused(atAngle(), '60', 'N·m')).toBe('reading-of-other-kind: wanted=angle, unit=N·m')
    expect(refused(atAngle(), '60 Nm', '°')).toContain('unit-unknown: typed=60 Nm, units=°')
  })
})

describe('a pass without anything to read', () => {
  it('takes no reading', () => {
    const bench = Bench.started()
    expect(refused(bench, '24', 'N·m')).toBe('reading-not-asked: fastener=1')
    bench.pullsNext(8)
    expect(refused(bench, '24', 'N·m')).toContain('reading-not-asked')
  })
})
