import { describe, expect, it } from 'vitest'
import { audit } from '../../../core/audit/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import {
  angleDrill,
  chartDrill,
  drillsOf,
  faultDrill,
  faultKindsOf,
  measureDrill,
  mirrorDrill,
  orderDrill,
  partsAtFault,
  proceduresToTry,
  progressOf,
  roundKinds,
  trainingRack,
  valuesDrill,
} from '../../../core/practice/index.ts'
import { en } from '../../../core/words/index.ts'
import { demo } from '../layout/demos.ts'

const person = 'N. Aas'
const seeds = Array.from({ length: 12 }, (_, round) => `round ${round}`)

/** A cover that one screw holds, torqued and turned, and nothing else. */
function oneFastener(): EngineSpec {
  const spec = demo('skerry-3')
  const [procedure] = spec.procedures
  const one = spec.fasteners.find(({ id }) => procedure!.orders[0]!.sequence.includes(id))!
  const [order] = procedure!.orders
  const lone = {
    ...procedure!,
    orders: [{ ...order!, sequence: [one.id] }],
    passes: procedure!.passes.flatMap((pass) =>
      pass.kind === 'seat' || pass.kind === 'torque' || pass.kind === 'angle'
        ? [{ ...pass, order: order!.id }]
        : [],
    ),
  }
  const steps = [{ id: 'pull', name: 'Pull', kind: 'run-procedure' as const, procedure: lone.id, after: [] }]
  return {
    ...spec,
    ...{ fasteners: [one], procedures: [lone], steps, fits: [], beads: [], parts: [], cautions: [] },
  }
}

describe('practice on an engine with one fastener', () => {
  const spec = oneFastener()
  const [fastener] = spec.fasteners

  it('is an engine that can be built', () => {
    expect(audit(spec).filter(({ weight }) => weight === 'fault')).toEqual([])
  })

  it('offers the drills that one fastener can be asked in, and no other', () => {
    const saddles = spec.case.saddles.length
    expect(saddles).toBeGreaterThan(1)
    expect(drillsOf(spec)).toEqual(['order', 'values', 'angle', 'mirror', 'measure', 'fault'])
    expect(proceduresToTry(spec)).toEqual([])
    expect(faultKindsOf(spec)).toEqual(['missed-pull'])
  })

  it.each(seeds)('asks for that fastener in every drill that is about one (%s)', (seed) => {
    expect(orderDrill(spec, seed)!.key).toEqual([fastener!.id])
    for (const turn of angleDrill(spec, seed)!.turns) expect(turn.fastener).toBe(fastener!.id)
    const values = valuesDrill(spec, seed, trainingRack(en), 'N·m', '2026-11-28')!
    expect(values.questions.length).toBeGreaterThan(0)
    expect(measureDrill(spec, seed).questions.length).toBeGreaterThan(0)
    // One fastener is never mistaken for another: the mirror asks for shells alone.
    for (const question of mirrorDrill(spec, seed)!.questions) expect(question.kind).toBe('shell')
    for (const { fault } of faultDrill(spec, seed, person)!.builds)
      expect(partsAtFault(fault)).toEqual([`fastener/${fastener!.id}`])
  })
})

describe('practice on an engine without a chart', () => {
  const spec = (() => {
    const all = demo('skerry-3')
    return { ...all, fits: all.fits.map(({ chart: _, ...fit }) => fit) } as EngineSpec
  })()

  it('has no chart drill and no swapped shell, and every other drill', () => {
    expect(chartDrill(spec, 'a')).toBeNull()
    expect(drillsOf(spec)).toEqual(drillsOf(demo('skerry-3')).filter((drill) => drill !== 'chart'))
    expect(faultKindsOf(spec)).not.toContain('shells-swapped')
    expect(faultKindsOf(spec)).toContain('missed-pull')
  })

  it.each(seeds.slice(0, 4))(
    'has finished builds with something else wrong, and never a shell (%s)',
    (seed) => {
      const { builds } = faultDrill(spec, seed, person)!
      expect(builds.length).toBeGreaterThan(0)
      for (const { fault } of builds) expect(fault.kind).not.toBe('shells-swapped')
    },
  )
})

describe.each(roundKinds)('rounds of %s', (drill) => {
  const round = (at: string, errors: number) => ({
    ...{ engine: 'skerry-3', drill, seconds: 40, at },
    tally: [{ about: 'fastener/case-1', errors }],
  })

  it('done with a clock that was set back by years are due after the one before them, in their order', () => {
    const [before] = progressOf([round('2026-03-02T07:30:00.000Z', 0)])
    const [standing] = progressOf([
      round('2026-03-02T07:30:00.000Z', 0),
      round('2019-01-01T00:00:00.000Z', 1),
      round('2019-01-01T00:01:00.000Z', 0),
    ])
    expect(standing).toMatchObject({ rounds: 3, faultless: 2, lastAt: '2019-01-01T00:01:00.000Z' })
    expect(Date.parse(standing!.dueAt)).toBeGreaterThan(Date.parse('2026-03-02T07:30:00.000Z'))
    expect(Date.parse(before!.dueAt)).toBeGreaterThan(Date.parse('2026-03-02T07:30:00.000Z'))
  })

  it('with 10,000 answers in a day are 100 rounds, and the places show the last ten', () => {
    const tally = Array.from({ length: 100 }, (_, index) => ({
      about: `fastener/case-${index}`,
      errors: index === 7 ? 1 : 0,
    }))
    const begun = Date.parse('2026-03-02T07:30:00.000Z')
    const rounds = Array.from({ length: 100 }, (_, index) => ({
      ...{ engine: 'skerry-3', drill, seconds: 40, tally },
      at: new Date(begun + index * 60_000).toISOString(),
    }))
    const [standing] = progressOf(rounds)
    expect(standing).toMatchObject({ rounds: 100, faultless: 0 })
    expect(standing!.places.reduce((sum, { asked }) => sum + asked, 0)).toBe(1000)
    expect(standing!.places[7]).toEqual({ about: 'fastener/case-7', asked: 10, errors: 10 })
    const days = (Date.parse(standing!.dueAt) - begun) / 86_400_000
    expect(days).toBeGreaterThan(0)
    expect(days).toBeLessThanOrEqual(182)
  })
})
