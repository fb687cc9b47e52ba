import { describe, expect, it } from 'vitest'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { Bench, pull } from '../bench.ts'
import { byStretch, capsBy } from '../stretch-engine.ts'

const length = (fastener: string, typed: string) => pull({ pass: 0, fastener }, [typed, 'mm'])

/** Three studs that clamp 60 mm, of which these were measured. */
function measured(...lengths: readonly string[]): Bench {
  const bench = Bench.started('own', capsBy(byStretch))
  lengths.forEach((typed, index) => bench.does(length(`cap-${index + 1}`, typed)))
  return bench
}

describe('the length of a fastener is asked about before it is recorded', () => {
  it('when the first is shorter than what it clamps', () => {
    expect(measured().refusal(length('cap-1', '59.99'))).toMatchObject({
      code: 'length-far-off',
      facts: {
        fastener: '1',
        read: { amount: 59.99, decimals: 3, isShort: false, unit: 'mm' },
        beside: { amount: 60, decimals: 3, isShort: false, unit: 'mm' },
        of: 'grip',
      },
    })
    expect(measured('60').run!.pulls).toHaveLength(1)
  })

  it('when it is more than a twentieth off the others of its group', () => {
    expect(measured('100').refusal(length('cap-2', '105.01'))).toMatchObject({
      code: 'length-far-off',
      facts: {
        fastener: '2',
        read: { amount: 105.01, decimals: 3, isShort: false, unit: 'mm' },
        beside: { amount: 100, decimals: 3, isShort: false, unit: 'mm' },
        of: 'others',
      },
    })
    expect(measured('100').refusal(length('cap-2', '94.99'))).toMatchObject({
      code: 'length-far-off',
      facts: {
        fastener: '2',
        read: { amount: 94.99, decimals: 3, isShort: false, unit: 'mm' },
        beside: { amount: 100, decimals: 3, isShort: false, unit: 'mm' },
        of: 'others',
      },
    })
    expect(measured('100', '105').run!.pulls).toHaveLength(2)
    expect(measured('100', '95').run!.pulls).toHaveLength(2)
  })

  it('against the lower one of two in the middle', () => {
    expect(measured('104', '100').refuses(length('cap-3', '105.01'))).toContain('about 100.000 mm')
  })

  it('when it is more than a fiftieth off its own before it was pulled', () => {
    const stretched = (typed: string) => {
      const bench = measured('100', '101', '101')
      bench.pullsNext(3)
      return { bench, asked: pull(bench.next!, [typed, 'mm'], { torque: ['75', 'lbf·ft'] }) }
    }
    const far = stretched('102.01')
    expect(far.bench.refusal(far.asked)).toMatchObject({
      code: 'length-far-off',
      facts: {
        fastener: '1',
        read: { amount: 102.01, decimals: 3, isShort: false, unit: 'mm' },
        beside: { amount: 100, decimals: 3, isShort: false, unit: 'mm' },
        of: 'itself',
      },
    })
    const near = stretched('102')
    expect(near.bench.does(near.asked)).toMatchObject([{ type: 'fastener-pulled', verdict: 'over' }])
  })

  it('and recorded when a person looked again and is sure', () => {
    const bench = measured('100')
    expect(bench.does({ ...length('cap-2', '120'), sure: true })).toMatchObject([{ sure: true }])
    expect(bench.run!.pulls.at(-1)).toMatchObject({ fastener: 'cap-2', reading: { typed: '120' } })
  })

  it('and not noted as asked about where nothing was asked', () => {
    const noted = measured('100').does({ ...length('cap-2', '101'), sure: true })
    expect(noted).toMatchObject([{ type: 'fastener-pulled', fastener: 'cap-2' }])
    expect(noted[0]).not.toHaveProperty('sure')
  })

  it('against the middle one of three, not the least', () => {
    const four = (spec: EngineSpec): EngineSpec => ({
      ...spec,
      procedures: spec.procedures.map((each) => ({
        ...each,
        orders: [{ id: 'all', sequence: ['cap-1', 'cap-2', 'cap-3', 'cap-4'] }],
      })),
    })
    const bench = Bench.started('own', capsBy(byStretch, four))
    for (const [fastener, typed] of [
      ['cap-1', '98'],
      ['cap-2', '100'],
      ['cap-3', '102'],
    ] as const)
      bench.does(length(fastener, typed))
    expect(bench.refuses(length('cap-4', '94.99'))).toContain('about 100.000 mm')
    bench.does(length('cap-4', '105'))
  })

  it('but not against a bolt of another kind', () => {
    const mixed = (spec: EngineSpec): EngineSpec => ({
      ...spec,
      fasteners: spec.fasteners.map((each) => (each.id === 'cap-1' ? { ...each, group: 'rod-bolts' } : each)),
    })
    const bench = Bench.started('own', capsBy(byStretch, mixed))
    bench.does(length('cap-1', '150'))
    bench.does(length('cap-2', '100'))
    expect(bench.refuses(length('cap-3', '150'))).toContain('about 100.000 mm')
  })

  it('but never against what no longer counts', () => {
    const bench = measured('100', '100')
    bench.does({ type: 'restart-run', pass: 0, reason: 'Studs were exchanged for long ones' })
    bench.does(length('cap-1', '150'))
    expect(bench.refuses(length('cap-2', '100'))).toContain('about 150.000 mm')
  })
})
