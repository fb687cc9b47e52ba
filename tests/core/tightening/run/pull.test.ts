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
    expect(bench.refuses(pull({ pass: 0, fastener: 'cap-4' }))).toBe(
      'Fastener 4 is not next: pass 1, fastener 2 is. To go before its turn, give a reason.',
    )
  })

  it('out of order needs a reason of a word at least', () => {
    const bench = Bench.started()
    for (const reason of ['', '   ', '.', 'ok', '- -'])
      expect(bench.refuses(pull({ pass: 0, fastener: 'cap-4' }, null, { outOfOrder: reason }))).toBe(
        'Say why 4 comes before 1, in a word at least.',
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
    expect(bench.refuses(pull({ pass: 1, fastener: 'rod-2' }, null, { outOfOrder: 'in a hurry' }))).toBe(
      'Fastener R2 has not been through pass 1. Pull it there before pass 2.',
    )
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
    expect(bench.refuses(pull({ pass: 0, fastener: 'cap-1' }))).toBe(
      'Fastener 1 is done in pass 1. If that was a mistake, take it back first.',
    )
  })

  it('of a fastener or a pass that the procedure does not have is refused', () => {
    const bench = Bench.started()
    expect(bench.refuses(pull({ pass: 0, fastener: 'rod-1' }))).toContain('Fastener R1 is not in pass 1')
    expect(bench.refuses(pull({ pass: 0, fastener: 'cap-9' }))).toContain('Fastener cap-9 is not in pass 1')
    expect(bench.refuses(pull({ pass: 4, fastener: 'cap-3' }))).toContain('Fastener 3 is not in pass 5')
    expect(bench.refuses(pull({ pass: 0, fastener: null }))).toContain(
      'The action between two passes is not in pass 1',
    )
    expect(bench.refuses(pull({ pass: 7, fastener: 'cap-1' }))).toBe(
      '“Main caps” has 5 passes, and no pass 8. Pull what the drawing shows as next.',
    )
  })

  it('of an action is confirmed in its turn, like a fastener', () => {
    const bench = Bench.started()
    bench.pullsNext(8)
    expect(bench.refuses(pull({ pass: 3, fastener: 'cap-1' }))).toBe(
      'Fastener 1 is not next: pass 3, an action is. To go before its turn, give a reason.',
    )
    bench.does(pull({ pass: 2, fastener: null }))
    expect(bench.next).toEqual({ pass: 3, fastener: 'cap-1' })
  })
})

describe('single-use fasteners', () => {
  it('are declared new before the first of them is pulled', () => {
    const bench = new Bench('rods')
    bench.does({ type: 'start-run' })
    expect(bench.refuses(pull({ pass: 0, fastener: 'rod-1' }))).toBe(
      'Rod bolts may be used once only. Confirm that they are new before the first of them is pulled.',
    )
    bench.does({ type: 'declare-new', group: 'rod-bolts' })
    bench.pullsNext(1)
    expect(bench.run?.pulls).toHaveLength(1)
  })

  it('are declared new once', () => {
    const bench = Bench.started('rods')
    expect(bench.refuses({ type: 'declare-new', group: 'rod-bolts' })).toBe(
      'Rod bolts are already confirmed as new.',
    )
  })

  it('that this procedure does not pull are not declared in it', () => {
    const bench = Bench.started('caps')
    expect(bench.refuses({ type: 'declare-new', group: 'rod-bolts' })).toBe(
      '“Rod bolts” are not pulled in “Main caps”. Confirm as new only what is.',
    )
    expect(bench.refuses({ type: 'declare-new', group: 'head-bolts' })).toContain('head-bolts')
  })

  it('are not asked about where bolts may be used again', () => {
    const bench = new Bench('caps')
    bench.does({ type: 'start-run' })
    bench.pullsNext(1)
    expect(bench.run?.declaredNew).toEqual([])
  })
})
