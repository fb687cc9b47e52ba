import { describe, expect, it } from 'vitest'
import { fastenerStates } from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'

const states = (bench: Bench) =>
  Object.fromEntries(
    [...fastenerStates(bench.procedure, bench.run)].map(([id, { state, share }]) => [
      id,
      `${state} ${share}`,
    ]),
  )

describe('the state of a fastener on the drawing', () => {
  it('is waiting for all before the run is started', () => {
    expect(states(new Bench('rods'))).toEqual({ 'rod-1': 'waiting 0', 'rod-2': 'waiting 0' })
  })

  it('is next for one and after-next for one when the run is started', () => {
    expect(states(Bench.started())).toEqual({
      'cap-1': 'next 0',
      'cap-2': 'after-next 0',
      'cap-3': 'waiting 0',
      'cap-4': 'waiting 0',
    })
  })

  it('tells the share of the passes that a fastener has been through', () => {
    const bench = Bench.started()
    bench.pullsNext(5)
    // Bolts 1 and 2 are in four passes, 3 and 4 in three: the last one rechecks the first two only.
    expect(states(bench)).toEqual({
      'cap-1': 'partly-done 0.5',
      'cap-2': 'next 0.25',
      'cap-3': `after-next ${1 / 3}`,
      'cap-4': `partly-done ${1 / 3}`,
    })
  })

  it('has nobody next while an action is', () => {
    const bench = Bench.started()
    bench.pullsNext(8)
    expect(Object.values(states(bench)).filter((state) => state.startsWith('next'))).toEqual([])
    expect(states(bench)['cap-1']).toBe('after-next 0.5')
  })

  it('is flagged until the flag is answered, except when it is that fastener’s turn', () => {
    const bench = Bench.started('rods')
    bench.does(pull({ pass: 0, fastener: 'rod-1' }, ['12', 'N·m']))
    expect(states(bench)).toEqual({ 'rod-1': 'flagged 0.5', 'rod-2': 'next 0' })
    bench.pullsNext(1)
    expect(states(bench)['rod-1']).toBe('next 0.5')
  })

  it('is done for all at the end', () => {
    const bench = Bench.started('rods')
    bench.pullsNext(4)
    expect(states(bench)).toEqual({ 'rod-1': 'done 1', 'rod-2': 'done 1' })
  })
})
