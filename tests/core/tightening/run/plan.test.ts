import { describe, expect, it } from 'vitest'
import { openPulls, plannedPulls } from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'

describe('the plan of a procedure', () => {
  it('is every fastener of every pass in order, and an action once for all of them', () => {
    const { procedure } = new Bench('caps')
    expect(plannedPulls(procedure).map(({ pass, fastener }) => `${pass} ${fastener}`)).toEqual([
      '0 cap-1',
      '0 cap-2',
      '0 cap-3',
      '0 cap-4',
      '1 cap-1',
      '1 cap-2',
      '1 cap-3',
      '1 cap-4',
      '2 null',
      '3 cap-1',
      '3 cap-2',
      '3 cap-3',
      '3 cap-4',
      '4 cap-1',
      '4 cap-2',
    ])
  })

  it('begins with the first fastener of the first pass', () => {
    expect(new Bench('rods').next).toEqual({ pass: 0, fastener: 'rod-1' })
  })

  it('comes back to what was skipped before it goes on', () => {
    const bench = Bench.started()
    bench.pullsNext(1)
    bench.does(pull({ pass: 0, fastener: 'cap-3' }, null, { outOfOrder: 'bolt 2 sits under the hose' }))
    expect(bench.next).toEqual({ pass: 0, fastener: 'cap-2' })
    bench.pullsNext(1)
    expect(bench.next).toEqual({ pass: 0, fastener: 'cap-4' })
  })

  it('has nothing left when the last fastener of the last pass is pulled', () => {
    const bench = Bench.started()
    bench.pullsNext(15)
    expect(bench.next).toBeNull()
    expect(openPulls(bench.procedure, bench.run)).toEqual([])
  })
})
