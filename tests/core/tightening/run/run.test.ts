import { describe, expect, it } from 'vitest'
import { decideRun, isRunDone, runProgress } from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { winchEngine } from '../winch-engine.ts'

describe('a run', () => {
  it('is started once', () => {
    const bench = new Bench()
    expect(bench.does({ type: 'start-run' })).toEqual([
      { type: 'run-started', version: 1, procedure: 'caps' },
    ])
    expect(bench.refusal({ type: 'start-run' })).toMatchObject({
      code: 'run-started-already',
      facts: { name: 'Main caps' },
    })
  })

  it('takes nothing before it is started', () => {
    const bench = new Bench()
    expect(bench.refusal(pull({ pass: 0, fastener: 'cap-1' }))).toMatchObject({
      code: 'run-not-started',
      facts: { name: 'Main caps' },
    })
  })

  it('of a procedure that the engine does not have is refused', () => {
    const answer = decideRun(winchEngine, undefined, { type: 'start-run', procedure: 'head' })
    expect(answer).toMatchObject({ ok: false, problem: { code: 'procedure-unknown' } })
  })

  it('is done when every pass is through, with readings or without', () => {
    const bench = Bench.started()
    bench.pullsNext(14)
    expect(isRunDone(bench.procedure, bench.run)).toBe(false)
    bench.pullsToTarget()
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('is not done while a flag waits for its answer', () => {
    const bench = Bench.started()
    bench.does({ type: 'note-problem', fastener: 'cap-2', text: 'Thread feels rough.' })
    bench.pullsNext(15)
    expect(isRunDone(bench.procedure, bench.run)).toBe(false)
    bench.does({ type: 'answer-flag', flag: 1, answer: 'Thread chased, bolt goes in by hand.' })
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('tells how far each pass has come', () => {
    const bench = Bench.started()
    bench.pullsNext(6)
    expect(
      runProgress(bench.procedure, bench.run).map(({ kind, pulled, planned }) => [kind, pulled, planned]),
    ).toEqual([
      ['seat', 4, 4],
      ['torque', 2, 4],
      ['action', 0, 1],
      ['torque', 0, 4],
      ['recheck', 0, 2],
    ])
  })
})

describe('a paused run', () => {
  const paused = () => {
    const bench = Bench.started()
    bench.pullsNext(5)
    bench.does({ type: 'pause-run', reason: ' The phone rings. ' })
    return bench
  }

  it('keeps the reason and goes on exactly where it was', () => {
    const bench = paused()
    expect(bench.run?.paused).toBe('The phone rings.')
    bench.does({ type: 'resume-run' })
    expect(bench.next).toEqual({ pass: 1, fastener: 'cap-2' })
  })

  it('takes no pull and gives none back', () => {
    const bench = paused()
    const sentence = '“Main caps” is paused. Continue it before pulling or taking back.'
    expect(bench.refuses(pull({ pass: 1, fastener: 'cap-2' }))).toBe(sentence)
    expect(bench.refuses({ type: 'take-back', pull: 5, reason: 'wrong bolt' })).toBe(sentence)
  })

  it('still hears of a problem', () => {
    const bench = paused()
    bench.does({ type: 'note-problem', fastener: null, text: 'Oil on the floor.' })
    expect(bench.run?.flags).toHaveLength(1)
  })

  it('cannot be paused again, and one that is not cannot be resumed', () => {
    const bench = paused()
    expect(bench.refuses({ type: 'pause-run', reason: '' })).toContain('is paused')
    bench.does({ type: 'resume-run' })
    expect(bench.refusal({ type: 'resume-run' })).toMatchObject({
      code: 'run-not-paused',
      facts: { name: 'Main caps' },
    })
  })

  it('is not done before it goes on, even when all is pulled and answered', () => {
    const bench = Bench.started()
    bench.does({ type: 'note-problem', fastener: null, text: 'Oil on the floor.' })
    bench.pullsNext(15)
    bench.does({ type: 'pause-run', reason: '' })
    bench.does({ type: 'answer-flag', flag: 1, answer: 'Wiped up.' })
    expect(isRunDone(bench.procedure, bench.run)).toBe(false)
    bench.does({ type: 'resume-run' })
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('needs no reason', () => {
    const bench = Bench.started()
    bench.does({ type: 'pause-run', reason: '' })
    expect(bench.run?.paused).toBe('')
    expect(bench.refuses(pull({ pass: 0, fastener: 'cap-1' }))).toContain('is paused')
  })

  it('cannot be one that is done', () => {
    const bench = Bench.started()
    bench.pullsNext(15)
    expect(bench.refuses({ type: 'pause-run', reason: '' })).toContain('is done')
  })
})
