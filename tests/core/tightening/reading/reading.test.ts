import { describe, expect, it } from 'vitest'
import type { Reading } from '../../../../core/tightening/index.ts'
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
  bench.refuses(pull(bench.next!, [typed, unit]))

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
    ['', 'Nothing was typed. Type a number, for example 12.5.'],
    ['abc', '“abc” is not a number. Type digits with a point or a comma, for example 12.5 or 12,5.'],
    ['-5', '“-5” is below zero. Read the scale and type it again.'],
    ['1e999', 'The unit of “1e999” is not known here. Use N·m, lbf·ft, lbf·in, kgf·m, kgf·cm, dN·m, ozf·in.'],
    ['1,234.5', '“1,234.5” has more than one point or comma. Type it with one at most, for example 1234.5.'],
    ['24 °', 'The unit of “24 °” is not known here. Use N·m, lbf·ft, lbf·in, kgf·m, kgf·cm, dN·m, ozf·in.'],
  ])('of “%s” is refused in a sentence', (typed, sentence) => {
    const bench = atTorque()
    expect(refused(bench, typed, 'N·m')).toBe(sentence)
    expect(bench.run?.pulls).toHaveLength(4)
  })

  it('is not given in degrees', () => {
    expect(refused(atTorque(), '24', '°')).toBe(
      'This pass asks for a torque, and the reading is in °. Read the other scale.',
    )
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
    expect(refused(atAngle(), '60', 'N·m')).toBe(
      'This pass asks for an angle in °, and the reading is in N·m. Read the other scale.',
    )
    expect(refused(atAngle(), '60 Nm', '°')).toContain('unit of “60 Nm” is not known')
  })
})

describe('a pass without anything to read', () => {
  it('takes no reading', () => {
    const bench = Bench.started()
    expect(refused(bench, '24', 'N·m')).toBe(
      'Fastener 1 has nothing to read in this pass. Confirm it without a reading.',
    )
    bench.pullsNext(8)
    expect(refused(bench, '24', 'N·m')).toContain('The action between two passes has nothing to read')
  })
})
