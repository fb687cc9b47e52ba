import { describe, expect, it } from 'vitest'
import { Bench, pull } from '../bench.ts'

describe('taking back', () => {
  it('opens the last pull again, and keeps it in the record with the reason', () => {
    const bench = Bench.started()
    bench.pullsNext(3)
    bench.does({ type: 'take-back', pull: 3, reason: ' That was bolt 4. ' })
    expect(bench.next).toEqual({ pass: 0, fastener: 'cap-3' })
    expect(bench.run?.pulls).toHaveLength(3)
    expect(bench.run?.pulls[2]).toMatchObject({ fastener: 'cap-3', takenBack: 'That was bolt 4.' })
  })

  it('is for the last pull only', () => {
    const bench = Bench.started()
    bench.pullsNext(3)
    expect(bench.refusal({ type: 'take-back', pull: 1, reason: 'wrong bolt' })).toMatchObject({
      code: 'not-the-last-pull',
      facts: { last: '3', pass: 1 },
    })
  })

  it('goes back pull by pull, and past those that were taken back before', () => {
    const bench = Bench.started()
    bench.pullsNext(3)
    bench.does({ type: 'take-back', pull: 3, reason: 'wrong bolt' })
    bench.does({ type: 'take-back', pull: 2, reason: 'wrong bolt too' })
    expect(bench.refusal({ type: 'take-back', pull: 2, reason: 'wrong bolt' })).toMatchObject({
      code: 'not-the-last-pull',
      facts: { last: '1', pass: 1 },
    })
    bench.pullsNext(1)
    expect(bench.run?.pulls.at(-1)).toMatchObject({ number: 4, fastener: 'cap-2', takenBack: null })
  })

  it('needs a reason', () => {
    const bench = Bench.started()
    bench.pullsNext(1)
    expect(bench.refusal({ type: 'take-back', pull: 1, reason: ' ' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'pull-taken-back' } },
    })
  })

  it('needs something to take back', () => {
    expect(Bench.started().refusal({ type: 'take-back', pull: 1, reason: 'wrong bolt' })).toMatchObject({
      code: 'nothing-to-take-back',
    })
  })

  it('answers the flag of a pull that came short: it is pulled again', () => {
    const bench = Bench.started()
    bench.pullsNext(4)
    bench.does(pull({ pass: 1, fastener: 'cap-1' }, ['20', 'N·m']))
    bench.does({ type: 'take-back', pull: 5, reason: 'let go too early' })
    expect(bench.run?.flags[0]).toMatchObject({ about: 'under', answer: 'let go too early' })
  })

  it('clears the flag of a reading that was mistyped: nothing went past its upper limit', () => {
    const bench = Bench.started()
    bench.pullsNext(4)
    bench.does(pull({ pass: 1, fastener: 'cap-1' }, ['241', 'N·m']))
    bench.does({ type: 'take-back', pull: 5, mistyped: true, reason: 'The reading was mistyped' })
    expect(bench.run?.flags[0]).toMatchObject({ about: 'over', answer: 'The reading was mistyped' })
    bench.does(pull({ pass: 1, fastener: 'cap-1' }, ['24.1', 'N·m']))
    expect(bench.run?.pulls.at(-1)).toMatchObject({ number: 6, verdict: 'within' })
  })

  it('does not answer for a pull that went over: the bolt stays stretched', () => {
    const bench = Bench.started()
    bench.pullsNext(4)
    bench.does(pull({ pass: 1, fastener: 'cap-1' }, ['60', 'N·m']))
    bench.does({ type: 'take-back', pull: 5, reason: 'slipped' })
    expect(bench.run?.flags[0]).toMatchObject({ about: 'over', answer: null })
  })
})
