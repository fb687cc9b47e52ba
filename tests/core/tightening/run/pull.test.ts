import { describe, expect, it } from 'vitest'
import { Bench, pull } from '../bench.ts'

describe('a pull', () => {
  it('is confirmed by the click alone', () => {
    const bench = Bench.started()
    expect(bench.does(pull({ pass: 0, fastener: 'cap-1' }))).toEqual([
      {
        type: 'fastener-pulled',
        version: 1,
        procedure: 'caps',
        pull: 1,
        pass: 0,
        fastener: 'cap-1',
        reading: null,
        verdict: 'unread',
        outOfOrder: null,
      },
    ])
  })

  it('out of order is refused, and told whose turn it is', () => {
    const bench = Bench.started()
    bench.pullsNext(1)
    expect(bench.refusal(pull({ pass: 0, fastener: 'cap-4' }))).toMatchObject({
      code: 'not-its-turn',
      facts: { fastener: '4', next: '2', pass: 1 },
    })
  })

  it('out of order needs a reason of a word at least', () => {
    const bench = Bench.started()
    for (const reason of ['', '   ', '.', 'ok', '- -'])
      expect(bench.refusal(pull({ pass: 0, fastener: 'cap-4' }, null, { outOfOrder: reason }))).toMatchObject(
        { code: 'reason-missing', facts: { reasonFor: { what: 'out-of-order', fastener: '4', next: '1' } } },
      )
  })

  it('out of order is recorded with its reason', () => {
    const bench = Bench.started()
    bench.does(pull({ pass: 0, fastener: 'cap-4' }, null, { outOfOrder: ' Bolt 1 is at the plater. ' }))
    expect(bench.run?.pulls[0]).toMatchObject({ fastener: 'cap-4', outOfOrder: 'Bolt 1 is at the plater.' })
  })

  it('in its turn is in order, whatever reason came along', () => {
    const bench = Bench.started()
    bench.does(pull({ pass: 0, fastener: 'cap-1' }, null, { outOfOrder: 'just because' }))
    expect(bench.run?.pulls[0]?.outOfOrder).toBeNull()
  })

  it('never goes before an earlier pass of its own fastener, reason or not', () => {
    const bench = Bench.started('rods')
    expect(
      bench.refusal(pull({ pass: 1, fastener: 'rod-2' }, null, { outOfOrder: 'in a hurry' })),
    ).toMatchObject({ code: 'earlier-pass-first', facts: { fastener: 'R2', earlier: 1, pass: 2 } })
  })

  it('may go before the others have been through a pass, with a reason', () => {
    const bench = Bench.started('rods')
    bench.pullsNext(1)
    bench.does(pull({ pass: 1, fastener: 'rod-1' }, null, { outOfOrder: 'rod 2 is being weighed' }))
    expect(bench.next).toEqual({ pass: 0, fastener: 'rod-2' })
  })

  it('is made once', () => {
    const bench = Bench.started()
    bench.pullsNext(1)
    expect(bench.refusal(pull({ pass: 0, fastener: 'cap-1' }))).toMatchObject({
      code: 'pulled-already',
      facts: { fastener: '1', pass: 1 },
    })
  })

  it('of a fastener or a pass that the procedure does not have is refused', () => {
    const bench = Bench.started()
    expect(bench.refusal(pull({ pass: 0, fastener: 'rod-1' }))).toMatchObject({
      code: 'fastener-not-in-pass',
      facts: { fastener: 'R1', pass: 1, name: 'Main caps' },
    })
    expect(bench.refusal(pull({ pass: 0, fastener: 'cap-9' }))).toMatchObject({
      code: 'fastener-not-in-pass',
      facts: { fastener: 'cap-9', pass: 1, name: 'Main caps' },
    })
    expect(bench.refusal(pull({ pass: 4, fastener: 'cap-3' }))).toMatchObject({
      code: 'fastener-not-in-pass',
      facts: { fastener: '3', pass: 5, name: 'Main caps' },
    })
    expect(bench.refusal(pull({ pass: 0, fastener: null }))).toMatchObject({
      code: 'fastener-not-in-pass',
      facts: { fastener: null, pass: 1, name: 'Main caps' },
    })
    expect(bench.refusal(pull({ pass: 7, fastener: 'cap-1' }))).toMatchObject({
      code: 'pass-unknown',
      facts: { pass: 8, passes: 5, name: 'Main caps' },
    })
  })

  it('of an action is confirmed in its turn, like a fastener', () => {
    const bench = Bench.started()
    bench.pullsNext(8)
    expect(bench.refusal(pull({ pass: 3, fastener: 'cap-1' }))).toMatchObject({
      code: 'not-its-turn',
      facts: { fastener: '1', next: null, pass: 3 },
    })
    bench.does(pull({ pass: 2, fastener: null }))
    expect(bench.next).toEqual({ pass: 3, fastener: 'cap-1' })
  })
})

describe('single-use fasteners', () => {
  it('are declared new before the first of them is pulled', () => {
    const bench = new Bench('rods')
    bench.does({ type: 'start-run' })
    expect(bench.refusal(pull({ pass: 0, fastener: 'rod-1' }))).toMatchObject({
      code: 'declare-new-first',
      facts: { group: 'Rod bolts' },
    })
    bench.does({ type: 'declare-new', group: 'rod-bolts' })
    bench.pullsNext(1)
    expect(bench.run?.pulls).toHaveLength(1)
  })

  it('are declared new once', () => {
    const bench = Bench.started('rods')
    expect(bench.refusal({ type: 'declare-new', group: 'rod-bolts' })).toMatchObject({
      code: 'declared-already',
      facts: { group: 'Rod bolts' },
    })
  })

  it('that this procedure does not pull are not declared in it', () => {
    const bench = Bench.started('caps')
    expect(bench.refusal({ type: 'declare-new', group: 'rod-bolts' })).toMatchObject({
      code: 'group-not-in-procedure',
      facts: { group: 'Rod bolts', name: 'Main caps' },
    })
    expect(bench.refuses({ type: 'declare-new', group: 'head-bolts' })).toContain('head-bolts')
  })

  it('are not asked about where bolts may be used again', () => {
    const bench = new Bench('caps')
    bench.does({ type: 'start-run' })
    bench.pullsNext(1)
    expect(bench.run?.declaredNew).toEqual([])
  })
})
