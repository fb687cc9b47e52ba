import { describe, expect, it } from 'vitest'
import { isReadingAsked } from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { measuredEngine } from '../measured-engine.ts'

/** Whether what is typed is the reading that the next pull asks for. */
function asks(bench: Bench, typed: string, unit: Parameters<typeof isReadingAsked>[4]['unit']): boolean {
  return isReadingAsked(bench.spec, bench.procedure, bench.run!, bench.next!, { typed, unit })
}

describe('the reading that a pull asks for', () => {
  it('is none where a hand seats the bolt', () => {
    expect(asks(Bench.started('caps'), '24', 'N·m')).toBe(false)
  })

  it('is one within its limits, in the unit of what is read', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    expect(['22.8', '24', '25.2'].map((typed) => asks(caps, typed, 'N·m'))).toEqual([true, true, true])
    expect(['22', '26', 'x', ''].map((typed) => asks(caps, typed, 'N·m'))).toEqual([
      false,
      false,
      false,
      false,
    ])
    expect(asks(caps, '24', '°')).toBe(false)
  })

  it('is what is left of a turn that came short', () => {
    const rods = Bench.started('rods')
    rods.pullsNext(2)
    rods.does(pull(rods.next!, ['40', '°']))
    expect(['20', '60'].map((typed) => asks(rods, typed, '°'))).toEqual([true, false])
  })

  it('is a length that goes with the others, and a stretch within its limits', () => {
    const bench = Bench.started('measured', measuredEngine)
    expect(asks(bench, '80', 'mm')).toBe(true)
    expect(asks(bench, '8', 'mm')).toBe(false)
    for (const fastener of ['cap-1', 'cap-2', 'cap-3']) bench.does(pull({ pass: 0, fastener }, ['80', 'mm']))
    bench.pullsNext(3)
    expect(['0.05', '0.06'].map((typed) => asks(bench, typed, 'mm'))).toEqual([true, false])
    bench.does(pull(bench.next!, ['0.03', 'mm']))
    bench.pullsNext(3)
    // 0.10 to 0.15 mm longer than the 80 mm before.
    expect(['80.09', '80.1', '80.15', '80.16'].map((typed) => asks(bench, typed, 'mm'))).toEqual([
      false,
      true,
      true,
      false,
    ])
  })
})
