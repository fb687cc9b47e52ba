import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { flagInShort, flagProblem, isRunDone, openFlags } from '../../../../core/tightening/index.ts'
import { en } from '../../../../core/words/index.ts'
import { Bench, pull } from '../bench.ts'
import { measuredEngine } from '../measured-engine.ts'

const firstProblem = (bench: Bench) =>
  flagProblem(bench.spec, bench.procedure, bench.run!, bench.run!.flags[0]!)
const firstSentence = (bench: Bench) => sentenceOf(firstProblem(bench))

function afterReading(typed: string, unit: 'N·m' | 'lbf·ft' | 'lbf·in' = 'N·m'): Bench {
  const bench = Bench.started()
  bench.pullsNext(4)
  bench.does(pull({ pass: 1, fastener: 'cap-1' }, [typed, unit]))
  return bench
}

describe('a flag', () => {
  it('is raised by a reading outside its limits, and says so', () => {
    const limits = { from: { amount: 22.8 }, upTo: { amount: 25.2 } }
    expect(firstProblem(afterReading('20'))).toMatchObject({
      code: 'reading-under',
      facts: { fastener: '1', read: { facts: { onScale: { amount: 20, unit: 'N·m' } } }, limits },
    })
    expect(firstProblem(afterReading('30'))).toMatchObject({
      code: 'reading-over-begin-again',
      facts: { fastener: '1', read: { facts: { onScale: { amount: 30, unit: 'N·m' } } }, limits },
    })
  })

  it('names the unit in which the reading would have been right', () => {
    expect(firstSentence(afterReading('24', 'lbf·in'))).toContain(
      "24 lbf·in, allowed 202 to 223: too little. In N·m it would be right: look at the unit on the wrench's scale.",
    )
  })

  it('reads at a fastener, and is measured at a face', () => {
    const short = (bench: Bench) => flagInShort(en, bench.procedure, bench.run!, bench.run!.flags[0]!)
    expect(short(afterReading('20'))).toBe('reads 20 N·m, 22.8 to 25.2')
    const gap = Bench.started('measured', measuredEngine)
    for (const fastener of ['cap-1', 'cap-2', 'cap-3']) gap.does(pull({ pass: 0, fastener }, ['80', 'mm']))
    gap.pullsNext(3)
    gap.does(pull(gap.next!, ['0.08', 'mm']))
    expect(short(gap)).toBe('measured 0.080 mm, at most 0.050 mm')
  })

  it('speaks the unit of the gauge: a gap of 0.003 in where 0.05 mm, 0.0020 in, is the most', () => {
    const gap = Bench.started('measured', measuredEngine)
    for (const fastener of ['cap-1', 'cap-2', 'cap-3']) gap.does(pull({ pass: 0, fastener }, ['80', 'mm']))
    gap.pullsNext(3)
    gap.does(pull(gap.next!, ['0.003', 'in']))
    expect(flagInShort(en, gap.procedure, gap.run!, gap.run!.flags[0]!)).toBe(
      'measured 0.0030 in, at most 0.0020 in',
    )
  })

  it('in a few words is the problem itself, or that the fastener moved', () => {
    const bench = Bench.started()
    bench.pullsNext(13)
    bench.does(pull({ pass: 4, fastener: 'cap-1' }, null, { moved: true }))
    bench.does({ type: 'note-problem', fastener: 'cap-1', text: 'Washer is cracked.' })
    expect(bench.run!.flags.map((flag) => flagInShort(en, bench.procedure, bench.run!, flag))).toEqual([
      'moved',
      'Washer is cracked.',
    ])
  })

  it('is not raised by a reading within, nor by a click without a reading', () => {
    const bench = afterReading('24')
    bench.pullsNext(1)
    expect(bench.run?.flags).toEqual([])
  })

  it('waits until it is told what was done', () => {
    const bench = afterReading('20')
    expect(bench.refusal({ type: 'answer-flag', flag: 1, answer: '' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'flag-answered' } },
    })
    bench.does({ type: 'answer-flag', flag: 1, answer: 'Pulled on to 24.' })
    expect(openFlags(bench.run)).toEqual([])
    expect(bench.run?.flags[0]?.answer).toBe('Pulled on to 24.')
  })

  it('is answered once, and not before it is raised', () => {
    const bench = afterReading('20')
    bench.does({ type: 'answer-flag', flag: 1, answer: 'Pulled on to 24.' })
    expect(bench.refusal({ type: 'answer-flag', flag: 1, answer: 'Again.' })).toMatchObject({
      code: 'flag-not-open',
      facts: { flag: 1 },
    })
    expect(bench.refuses({ type: 'answer-flag', flag: 2, answer: 'What?' })).toContain('Flag 2')
  })

  it("carries a person's own words about a problem, beside the last pull of that fastener", () => {
    const bench = Bench.started()
    bench.pullsNext(2)
    bench.does({ type: 'note-problem', fastener: 'cap-1', text: 'Washer is cracked.' })
    expect(bench.run?.flags[0]).toMatchObject({ about: 'problem', pull: 1, fastener: 'cap-1' })
    expect(firstSentence(bench)).toBe('Fastener 1: Washer is cracked.')
  })

  it('may be about no fastener, but not about one of another procedure', () => {
    const bench = Bench.started()
    bench.does({ type: 'note-problem', fastener: null, text: 'The stand wobbles.' })
    expect(bench.run?.flags[0]).toMatchObject({ fastener: null, pull: null })
    expect(bench.refusal({ type: 'note-problem', fastener: 'rod-1', text: 'Rough.' })).toMatchObject({
      code: 'fastener-not-in-procedure',
      facts: { fastener: 'R1', name: 'Main caps' },
    })
    expect(bench.refusal({ type: 'note-problem', fastener: null, text: '?' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'problem' } },
    })
  })
})

describe('a recheck', () => {
  const atRecheck = () => {
    const bench = Bench.started()
    bench.pullsNext(13)
    return bench
  }

  it('is passed by a fastener that holds', () => {
    const bench = atRecheck()
    bench.pullsNext(2)
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('raises a flag for a fastener that moved, even when its reading is within', () => {
    const bench = atRecheck()
    bench.does(pull({ pass: 4, fastener: 'cap-1' }, ['40', 'N·m'], { moved: true }))
    bench.pullsNext(1)
    expect(bench.run?.flags[0]).toMatchObject({ about: 'moved', fastener: 'cap-1', pull: 14 })
    expect(firstProblem(bench)).toMatchObject({ code: 'fastener-moved', facts: { fastener: '1' } })
    expect(isRunDone(bench.procedure, bench.run)).toBe(false)
    bench.does({ type: 'answer-flag', flag: 1, answer: 'Set again to 40, holds now.' })
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('is the only pass in which moving is news', () => {
    const bench = Bench.started()
    expect(bench.refusal(pull({ pass: 0, fastener: 'cap-1' }, null, { moved: true }))).toMatchObject({
      code: 'moved-outside-recheck',
      facts: { fastener: '1' },
    })
  })
})
