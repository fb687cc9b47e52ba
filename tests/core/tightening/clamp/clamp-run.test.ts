import { describe, expect, it } from 'vitest'
import {
  clampAfter,
  clampRun,
  greatestDifference,
  inOrder,
  loadsAfter,
  type mappedOrders,
  passDifferences,
  type ClampRun,
} from '../../../../core/tightening/index.ts'
import type { ClampState } from '../../../../core/joint/index.ts'
import { newtons } from '../../../../core/quantity/index.ts'
import { demo } from '../../layout/demos.ts'

const spec = demo('skerry-3')
const procedure = spec.procedures.find(({ name }) => name === 'Case bolts')!

function runOf(order: (typeof mappedOrders)[number]): ClampRun {
  const run = clampRun(spec, inOrder(spec, procedure, null, order), 'metal')
  if (!run.ok) throw new Error('the demo engine cannot be calculated')
  return run.value
}

const asGiven = runOf('spec')

/** A run of two bolts in two passes of which only the loads matter: a hand-written one, not the model's. */
function runWith(loads: readonly (readonly [number, number])[]): ClampRun {
  const stateOf = (newtonsAt: readonly number[]): ClampState => ({
    ...{ loads: newtonsAt.map(newtons), sinkMm: [], openShare: 0 },
  })
  const pulls = [
    { pass: 0, bolt: 'a' },
    { pass: 0, bolt: 'b' },
    { pass: 1, bolt: 'a' },
    { pass: 1, bolt: 'b' },
  ]
  const afterPulls = loads.map(stateOf)
  return {
    flange: { bolts: [{ id: 'a' }, { id: 'b' }] } as unknown as ClampRun['flange'],
    map: {
      atRest: stateOf([0, 0]),
      afterPulls,
      afterPasses: [
        { pass: 0, state: afterPulls[1]! },
        { pass: 1, state: afterPulls[3]! },
      ],
    },
    ...{ pulls, own: new Set(['a', 'b']) },
  }
}

describe('what fasteners hold, pull by pull', () => {
  it('is said of those that were pulled, and of no other', () => {
    expect(loadsAfter(asGiven, 0).size).toBe(0)
    const [first, second] = procedure.orders[0]!.sequence
    expect([...loadsAfter(asGiven, 1).keys()]).toEqual([first])
    expect([...loadsAfter(asGiven, 2).keys()].sort()).toEqual([first, second].sort())
  })

  it('is said of all fasteners of the run in the end, and never of others on the same face', () => {
    const others = spec.fasteners.filter(({ id, face }) => face === procedure.face && !asGiven.own.has(id))
    expect(others.length).toBeGreaterThan(0)
    const loads = loadsAfter(asGiven, asGiven.pulls.length)
    expect([...loads.keys()].sort()).toEqual([...asGiven.own].sort())
  })

  it('is a state for each pull: at rest before the first, the last one from then on', () => {
    expect(clampAfter(asGiven, 0)).toBe(asGiven.map.atRest)
    expect(clampAfter(asGiven, 3)).toBe(asGiven.map.afterPulls[2])
    const count = asGiven.pulls.length
    expect(clampAfter(asGiven, count)).toBe(asGiven.map.afterPulls[count - 1])
    expect(clampAfter(asGiven, count + 5)).toBe(asGiven.map.afterPulls[count - 1])
  })
})

describe('two orders of one procedure', () => {
  it('are compared at the end of each pass, by the fastener that differs most', () => {
    const one = runWith([
      [9_000, 0],
      [8_000, 9_000],
      [20_000, 9_000],
      [20_000, 20_000],
    ])
    const other = runWith([
      [0, 9_000],
      [9_000, 6_000],
      [9_000, 20_000],
      [19_500, 20_000],
    ])
    // After pass 1: a +1 kN, b −3 kN. After pass 2: a −0.5 kN. That one pull in, a differs by 9 kN, says nothing.
    expect(passDifferences(one, other)).toEqual([
      { pass: 0, pulls: 2, bolt: 'b', first: 9_000, second: 6_000 },
      { pass: 1, pulls: 4, bolt: 'a', first: 20_000, second: 19_500 },
    ])
    expect(greatestDifference(one, other)?.pass).toBe(0)
  })

  it('differ by all that one of them holds where the other never pulled the bolt', () => {
    const one = runWith([
      [9_000, 0],
      [9_000, 8_000],
      [9_000, 8_000],
      [9_000, 8_000],
    ])
    const other = { ...one, own: new Set(['a']) }
    expect(greatestDifference(one, other)).toEqual({
      ...{ pass: 0, pulls: 2, bolt: 'b', first: 8_000, second: 0 },
    })
  })

  it('name the first of two bolts, and of two passes, that differ alike', () => {
    const one = runWith([
      [9_000, 0],
      [9_000, 9_000],
      [9_000, 9_000],
      [9_000, 9_000],
    ])
    const other = runWith([
      [8_000, 0],
      [8_000, 8_000],
      [8_000, 8_000],
      [8_000, 8_000],
    ])
    expect(passDifferences(one, other).map(({ pass, bolt }) => [pass, bolt])).toEqual([
      [0, 'a'],
      [1, 'a'],
    ])
    expect(greatestDifference(one, other)).toMatchObject({ pass: 0, bolt: 'a' })
  })

  it('are the spec’s, a person’s own, the spec’s from its end, or a pattern over the same bolts', () => {
    const { sequence } = procedure.orders[0]!
    const firstOf = (order: Parameters<typeof inOrder>[3], own: typeof procedure | null = null) =>
      inOrder(spec, procedure, own, order).orders[0]!.sequence
    const own = { ...procedure, orders: [{ ...procedure.orders[0]!, sequence: sequence.toSorted() }] }
    expect(firstOf('spec', own)).toEqual(sequence)
    expect(firstOf('own', own)).toEqual(sequence.toSorted())
    expect(firstOf('own')).toEqual(sequence)
    expect(firstOf('reversed', own)).toEqual(sequence.toReversed())
    const fromEnd = firstOf('end-to-end', own)
    expect(fromEnd.toSorted()).toEqual(sequence.toSorted())
    expect(fromEnd).not.toEqual(sequence)
  })

  it('do not differ where they are the same', () => {
    const same = passDifferences(asGiven, runOf('spec'))
    expect(same.length).toBeGreaterThan(1)
    for (const { first, second } of same) expect(second).toBe(first)
  })

  it('differ most after a pass of the procedure, on every face of a split case and of one with caps', () => {
    let compared = 0
    for (const engine of [spec, demo('fen-1')])
      for (const each of engine.procedures) {
        const [first, second] = (['spec', 'end-to-end'] as const).map((order) =>
          clampRun(engine, inOrder(engine, each, null, order), 'metal'),
        )
        if (first?.ok !== true || second?.ok !== true) continue
        const greatest = greatestDifference(first.value, second.value)
        if (greatest === null) continue
        compared += 1
        expect(first.value.pulls[greatest.pulls - 1]?.pass, engine.id).toBe(greatest.pass)
        expect(first.value.own.has(greatest.bolt), engine.id).toBe(true)
        for (const { first: one, second: other } of passDifferences(first.value, second.value))
          expect(Math.abs(other - one)).toBeLessThanOrEqual(Math.abs(greatest.second - greatest.first))
      }
    expect(compared).toBeGreaterThan(4)
  })
})
