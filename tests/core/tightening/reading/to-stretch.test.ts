import { describe, expect, it } from 'vitest'
import { en } from '../../../../core/words/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import {
  explainPull,
  flagProblem,
  isRunDone,
  openFlags,
  passText,
  remedyOf,
  windowOf,
} from '../../../../core/tightening/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { Bench, pull } from '../bench.ts'
import { byStretch, capsBy } from '../stretch-engine.ts'

const cap = { pass: 2, fastener: 'cap-1' }

/** The bench with every stud 6.000 in long and pulled to 30 lbf·ft: what is next is the stretch of the first. */
function snug(change?: (spec: EngineSpec) => EngineSpec): Bench {
  const bench = Bench.started('own', capsBy(byStretch, change))
  for (const fastener of ['cap-1', 'cap-2', 'cap-3']) bench.does(pull({ pass: 0, fastener }, ['6', 'in']))
  bench.pullsNext(3)
  return bench
}

/** The first stud as it measures, and its torque. */
function stretched(inches: string, torque: string, bench = snug()): Bench {
  bench.does(pull(cap, [inches, 'in'], { torque: [torque, 'lbf·ft'] }))
  return bench
}

const sentence = (bench: Bench) =>
  sentenceOf(flagProblem(bench.spec, bench.procedure, bench.run!, openFlags(bench.run)[0]!))
const way = (bench: Bench) => remedyOf(bench.spec, bench.procedure, bench.run!, openFlags(bench.run)[0]!)

describe('a fastener that is tightened until it is 0.019 to 0.024 in longer, at 60 to 90 lbf·ft', () => {
  it.each([
    ['6.019', '60'],
    ['6.024', '90'],
    ['6.020', '75'],
  ])('is done at %s in, of 6.000 in before, and %s lbf·ft', (inches, torque) => {
    const bench = stretched(inches, torque)
    expect(bench.run?.pulls.at(-1)).toMatchObject({ verdict: 'within', torque: { typed: torque } })
    expect(bench.next?.fastener).toBe('cap-2')
  })

  it('aims at the middle of its torques: 75 lbf·ft is 101.7 N·m', () => {
    const { procedure } = snug()
    const window = windowOf(procedure.passes[2]!, 'cap-1')
    expect(window?.kind === 'length' && window.torque?.target).toBeCloseTo(101.686, 2)
  })

  it('needs both its length and its torque', () => {
    const bench = snug()
    expect(bench.refusal(pull(cap, ['6.02', 'in']))).toMatchObject({
      code: 'torque-missing',
      facts: { fastener: '1' },
    })
    expect(bench.refuses(pull(cap, null, { torque: ['75', 'lbf·ft'] }))).toContain('is measured')
    expect(bench.refusal(pull(cap, ['6.02', 'in'], { torque: ['75', 'mm'] }))).toMatchObject({
      code: 'reading-of-other-kind',
      facts: { wanted: 'torque', unit: 'mm' },
    })
  })

  it('is tightened on from where it stands while it is short and has torque left, and is then done', () => {
    const bench = stretched('6.012', '55')
    expect(sentence(bench)).toBe(
      'Fastener 1: 0.0120 in longer at 55 lbf·ft, allowed 0.0190 in to 0.0240 in: too little. Leave it where it stands, ' +
        'tighten it on to no more than 90 lbf·ft, and measure it again.',
    )
    expect(way(bench)).toBe('turn-on')
    expect(bench.next).toEqual(cap)
    expect(bench.refuses({ type: 'answer-flag', flag: 1, answer: 'Left as it is' })).toContain(
      'Tighten it on',
    )
    stretched('6.017', '70', bench)
    stretched('6.021', '80', bench)
    expect(openFlags(bench.run)).toEqual([])
    expect(bench.run?.flags.map(({ answer }) => answer)).toEqual([
      { deed: 'tightened-on' },
      { deed: 'tightened-on' },
    ])
    expect(bench.next?.fastener).toBe('cap-2')
  })

  it('is not tightened past its largest torque to reach its length: it begins again', () => {
    for (const torque of ['90', '91']) {
      const bench = stretched('6.015', torque)
      expect(way(bench)).toBe('begin-again')
      expect(sentence(bench)).toContain(
        'do not tighten it further. Loosen it all the way, look at thread, head and oil',
      )
      expect(bench.refusal(pull(cap, ['6.02', 'in'], { torque: ['95', 'lbf·ft'] }))).toMatchObject({
        code: 'pulled-already',
        facts: { fastener: '1', pass: 3 },
      })
    }
  })

  it('begins again where its torque is too much for a length that is right', () => {
    expect(way(stretched('6.020', '90.5'))).toBe('begin-again')
  })

  it('begins again where it gave way below its least torque', () => {
    const bench = stretched('6.020', '59')
    expect(way(bench)).toBe('begin-again')
    expect(sentence(bench)).toContain('at 59 lbf·ft (allowed 60 to 90): it gave way too easily')
  })

  it('is measured again when it begins again', () => {
    const bench = stretched('6.020', '59')
    bench.does({ type: 'loosen-fastener', fastener: 'cap-1', reason: 'Gave way' })
    expect(openFlags(bench.run)).toEqual([])
    expect(bench.next).toEqual({ pass: 0, fastener: 'cap-1' })
    // It stayed 0.002 in longer: what counts now is the length it has now.
    bench.does(pull({ pass: 0, fastener: 'cap-1' }, ['6.002', 'in']))
    bench.pullsNext()
    stretched('6.022', '70', bench)
    expect(bench.run?.pulls.at(-1)).toMatchObject({ stretch: 508_000, verdict: 'within' })
  })

  it('is replaced where it is longer than it may be, whatever its torque', () => {
    for (const torque of ['50', '75', '95']) {
      const bench = stretched('6.0241', torque)
      expect(way(bench)).toBe('replace')
      expect(sentence(bench)).toContain('fit a new one')
    }
  })

  it('is replaced whatever went too far, where it may be used once only or the spec says so', () => {
    const group = (change: object) => (spec: EngineSpec) => ({
      ...spec,
      fastenerGroups: spec.fastenerGroups.map((each) => ({ ...each, ...change })),
    })
    for (const change of [{ reuse: 'new-each-time' }, { pastMost: 'replace' }]) {
      const bench = stretched('6.020', '95', snug(group(change)))
      expect(way(bench)).toBe('replace')
      expect(sentence(bench)).toContain('look at thread, head and oil, fit a new one')
    }
  })

  it('is read again with its torque, or without: the torque then stays as it was read', () => {
    const bench = stretched('6.030', '75')
    const again = { type: 'read-again' as const, pull: 7, reason: 'Gauge was not zeroed' }
    bench.does({ ...again, reading: { typed: '6.020', unit: 'in' } })
    expect(bench.run?.pulls.at(-1)).toMatchObject({ verdict: 'within', torque: { typed: '75' } })
    const other = stretched('6.020', '95')
    other.does({
      ...again,
      reading: { typed: '6.020', unit: 'in' },
      torque: { typed: '85', unit: 'lbf·ft' },
    })
    expect(other.run?.pulls.at(-1)).toMatchObject({ verdict: 'within', torque: { typed: '85' } })
  })

  it('has the torque of the fastener, not of the scale, where an adapter is between', () => {
    const bench = snug()
    // 12 in and a 4 in adapter: 60 on the scale are 80 at the stud, 70 are 93.
    const wrenchUsed = {
      wrench: 'Click 100',
      length_nm: 304_800_000,
      adapter: { name: 'Crowfoot', offset_nm: 101_600_000, angle_deg: 0 },
    }
    bench.does({ ...pull(cap, ['6.02', 'in'], { torque: ['60', 'lbf·ft'] }), held: wrenchUsed })
    expect(bench.run?.pulls.at(-1)).toMatchObject({ verdict: 'within', held: wrenchUsed })
    bench.does({
      ...pull({ ...cap, fastener: 'cap-2' }, ['6.02', 'in'], { torque: ['70', 'lbf·ft'] }),
      held: wrenchUsed,
    })
    expect(bench.run?.pulls.at(-1)).toMatchObject({ verdict: 'over' })
  })

  it('is done once all are, and says its torque in the list of passes', () => {
    const bench = stretched('6.02', '75')
    for (const fastener of ['cap-2', 'cap-3'])
      bench.does(pull({ ...cap, fastener }, ['6.02', 'in'], { torque: ['75', 'lbf·ft'] }))
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
    expect(passText(en, bench.spec, bench.procedure.passes[2]!, { torque: 'lbf·ft', length: 'in' })).toBe(
      'tighten to a stretch, 0.0190 in to 0.0240 in; at 60 to 90 lbf·ft',
    )
  })

  it('is explained by no torque: what it holds was measured', () => {
    const { spec, procedure } = snug()
    expect(explainPull(spec, procedure, 2, 'cap-1')).toEqual({ ok: true, value: null })
  })
})
