import { describe, expect, it } from 'vitest'
import { isRunDone, remedyOf } from '../../../../core/tightening/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { Bench, pull } from '../bench.ts'
import { measuredEngine } from '../measured-engine.ts'
import { winchEngine } from '../winch-engine.ts'
import { answerText } from '../../../../core/tightening/index.ts'
import { en } from '../../../../core/words/index.ts'

const groupSays = (spec: EngineSpec, id: string, change: object): EngineSpec => ({
  ...spec,
  fastenerGroups: spec.fastenerGroups.map((group) => (group.id === id ? { ...group, ...change } : group)),
})

/** The rod bolts as reusable ones, with what their manual says of one that was turned too far. */
const reusable = (pastMost?: 'replace' | 'begin-again') =>
  groupSays(winchEngine, 'rod-bolts', { reuse: 'reusable', pastMost })

function tooFar(spec: EngineSpec): Bench {
  const rods = Bench.started('rods', spec)
  rods.pullsToTarget()
  rods.pullsToTarget()
  rods.does(pull(rods.next!, ['70', '°']))
  return rods
}

describe('a fastener past its upper limit', () => {
  it('is never left as it is, no matter who says so', () => {
    const rods = tooFar(winchEngine)
    expect(
      rods.refusal({ type: 'answer-flag', flag: 1, answer: 'Asked the foreman: left as it is' }),
    ).toMatchObject({ code: 'must-be-replaced', facts: { fastener: 'R1' } })
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['30', 'N·m']))
    expect(caps.refusal({ type: 'answer-flag', flag: 1, answer: 'It will be all right' })).toMatchObject({
      code: 'must-begin-again',
      facts: { fastener: '1' },
    })
  })

  it('is not pulled on before it is settled', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['30', 'N·m']))
    caps.pullsNext(3)
    caps.does(pull({ pass: 2, fastener: null }))
    expect(caps.refuses(pull({ pass: 3, fastener: 'cap-1' }))).toContain('begin it again')
  })

  it('begins again where it may be used again and is only torqued, and loosening settles the flag', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['30', 'N·m']))
    caps.does({ type: 'loosen-fastener', fastener: 'cap-1', reason: 'Too much' })
    expect(answerText(en, caps.run!.flags[0]!.answer!)).toBe('Loosened, and begun again from its first pass.')
    expect(caps.next).toEqual({ pass: 0, fastener: 'cap-1' })
  })

  it('is replaced or begins again as its group says, where it may be used again', () => {
    for (const [says, way] of [
      [undefined, 'replace'],
      ['replace', 'replace'],
      ['begin-again', 'begin-again'],
    ] as const) {
      const rods = tooFar(reusable(says))
      expect(remedyOf(rods.spec, rods.procedure, rods.run!, rods.run!.flags[0]!)).toBe(way)
    }
    const caps = Bench.started('caps', groupSays(winchEngine, 'cap-bolts', { pastMost: 'replace' }))
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['30', 'N·m']))
    expect(remedyOf(caps.spec, caps.procedure, caps.run!, caps.run!.flags[0]!)).toBe('replace')
  })

  it('is replaced whatever its group says where it may be used once only', () => {
    const rods = tooFar(groupSays(winchEngine, 'rod-bolts', { pastMost: 'begin-again' }))
    expect(remedyOf(rods.spec, rods.procedure, rods.run!, rods.run!.flags[0]!)).toBe('replace')
  })

  it('undone and begun again is done at the end, as a manual says of 94° where 90° was meant', () => {
    const rods = tooFar(reusable('begin-again'))
    rods.does({ type: 'loosen-fastener', fastener: 'rod-1', reason: 'Undo and restart' })
    while (rods.next !== null) rods.pullsToTarget()
    expect(isRunDone(rods.procedure, rods.run)).toBe(true)
  })

  it('can still be loosened after its pull was taken back', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['30', 'N·m']))
    for (const number of [5, 4, 3, 2, 1])
      caps.does({ type: 'take-back', pull: number, reason: 'Wrong wrench setting' })
    caps.does({ type: 'loosen-fastener', fastener: 'cap-1', reason: 'Too much' })
    expect(caps.run!.flags[0]!.answer).not.toBeNull()
  })

  it('begins again with all the others when the run begins again at its first pass', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['30', 'N·m']))
    caps.does({ type: 'restart-run', pass: 0, reason: 'Part has to come off again' })
    expect(caps.run!.flags[0]!.answer).toEqual({ deed: 'begun-again' })
  })
})

describe('a stretch past its upper limit', () => {
  /** Reusable cap bolts, 0.10 to 0.15 mm longer after 30 N·m; the first is 0.16 mm longer. */
  function stretched(): Bench {
    const bench = Bench.started('measured', measuredEngine)
    while (bench.next!.pass < 3) {
      const kind = bench.procedure.passes[bench.next!.pass]!.kind
      const gap = kind === 'seat' && bench.next!.fastener === null
      bench.does(pull(bench.next!, kind === 'length' ? ['80', 'mm'] : gap ? ['0.03', 'mm'] : null))
    }
    bench.does(pull(bench.next!, ['80.16', 'mm']))
    return bench
  }

  it('is replaced, though the bolt may be used again: no answer counts it as done', () => {
    const bench = stretched()
    const flag = bench.run!.flags[0]!
    expect(remedyOf(bench.spec, bench.procedure, bench.run!, flag)).toBe('replace')
    expect(bench.refusal({ type: 'answer-flag', flag: 1, answer: 'Left as it is' })).toMatchObject({
      code: 'must-be-replaced',
      facts: { fastener: '1' },
    })
    bench.does({ type: 'loosen-fastener', fastener: 'cap-1', reason: 'Stretched too far' })
    bench.does({ type: 'replace-fastener', fastener: 'cap-1' })
    expect(bench.next).toEqual({ pass: 0, fastener: 'cap-1' })
    expect(bench.run!.flags[0]!.answer).toEqual({ deed: 'replaced' })
  })

  it('is not taken back out of the record of what went past: measuring again is reading again', () => {
    const bench = stretched()
    const { number } = bench.run!.pulls.at(-1)!
    bench.does({ type: 'take-back', pull: number, reason: 'Measured badly' })
    expect(bench.run!.flags[0]!.answer).toBeNull()
    const other = stretched()
    other.does({
      type: 'read-again',
      pull: number,
      reading: { typed: '80.14', unit: 'mm' },
      reason: 'The micrometer was not square',
    })
    expect(other.run!.pulls.at(-1)).toMatchObject({ verdict: 'within', stretch: 140_000 })
    expect(other.run!.flags[0]!.answer).toBe('The micrometer was not square')
  })
})

describe('a reading that is read again', () => {
  it('is judged as the first was, and settles the flag when it is within', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['240', 'N·m']))
    caps.does({
      type: 'read-again',
      pull: 5,
      reading: { typed: '24', unit: 'N·m' },
      reason: 'A digit too many',
    })
    expect(caps.run!.flags).toMatchObject([{ about: 'over', answer: 'A digit too many' }])
    expect(caps.run!.pulls[4]).toMatchObject({ verdict: 'within', reading: { value: 24 } })
  })

  it('that is still outside is flagged again', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['240', 'N·m']))
    caps.does({
      type: 'read-again',
      pull: 5,
      reading: { typed: '30', unit: 'N·m' },
      reason: 'A digit too many',
    })
    expect(caps.run!.flags).toMatchObject([{ answer: 'A digit too many' }, { about: 'over', answer: null }])
  })

  it('needs a flag about it, and a reason', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['24', 'N·m']))
    const again = { type: 'read-again' as const, pull: 5, reading: { typed: '25', unit: 'N·m' as const } }
    expect(caps.refusal({ ...again, reason: 'For fun' })).toMatchObject({
      code: 'not-flagged-reading',
      facts: { pull: 5 },
    })
    caps.does(pull(caps.next!, ['30', 'N·m']))
    expect(caps.refusal({ ...again, pull: 6, reason: '.' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'pull-read-again' } },
    })
  })
})
