import { describe, expect, it } from 'vitest'
import { emptyBuild, evolve } from '../../../../core/builds/index.ts'
import { doneSince } from '../../../../core/builds/sheet/done-since.ts'
import { isWorkDone } from '../../../../core/builds/steps/steps.ts'
import { lastLivePull } from '../../../../core/tightening/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')
const reason = 'To see what becomes of it'

/** The long way: every step is asked after every entry. */
function askedAfterEach({ spec, entries }: Workshop): Record<string, number> {
  const since = new Map<string, number>()
  let state = emptyBuild
  for (const entry of entries) {
    state = evolve(state, entry)
    for (const step of spec.steps)
      if (!isWorkDone(spec, state, step)) since.delete(step.id)
      else if (!since.has(step.id)) since.set(step.id, entry.seq)
  }
  return Object.fromEntries(since)
}

function found({ spec, state, entries }: Workshop): Record<string, number> {
  return Object.fromEntries(
    [...doneSince([{ spec, until: Infinity }], state, entries)].map(([step, { seq }]) => [step, seq]),
  )
}

/** How often the plan of a run is looked up to see whether the run is done. */
function timesRunsAreAsked(shop: Workshop, find: (shop: Workshop) => unknown): number {
  let asked = 0
  const spec = Object.defineProperty({ ...skerry }, 'procedures', {
    get() {
      asked += 1
      return skerry.procedures
    },
  })
  find({ spec, state: shop.state, entries: shop.entries } as Workshop)
  return asked
}

describe('the entry by which a step was done', () => {
  it('is its last pull; after a problem was noted, the answer to it', () => {
    const shop = new Workshop(skerry)
    shop.worksThrough('rods-on')
    const done = shop.entries.length
    expect(found(shop)['rods-on']).toBe(done)
    shop.does({ type: 'note-problem', procedure: 'rods', fastener: null, text: reason })
    expect(found(shop)['rods-on']).toBeUndefined()
    const flag = shop.state.runs['rods']!.flags.at(-1)!.number
    shop.does({ type: 'answer-flag', procedure: 'rods', flag, answer: reason })
    expect(found(shop)['rods-on']).toBe(done + 2)
    expect(found(shop)).toEqual(askedAfterEach(shop))
  })

  it('is a later one after the last pull was taken back and made again', () => {
    const shop = new Workshop(skerry)
    shop.worksThrough('rods-on')
    const pull = lastLivePull(shop.state.runs['rods'])!.number
    shop.does({ type: 'take-back', procedure: 'rods', pull, reason, notTurned: true })
    expect(found(shop)['rods-on']).toBeUndefined()
    shop.worksThrough('rods-on')
    expect(found(shop)['rods-on']).toBe(shop.entries.length)
    expect(found(shop)).toEqual(askedAfterEach(shop))
  })

  it('is found for every step of a whole build, at each of its entries, as by asking after each', () => {
    const shop = new Workshop(skerry)
    let checks = 0
    for (const { id } of skerry.steps) {
      while (!isWorkDone(skerry, shop.state, shop.step(id))) {
        shop.goesOn()
        if (shop.entries.length % 7 !== 0) continue
        expect(found(shop)).toEqual(askedAfterEach(shop))
        checks += 1
      }
    }
    expect(checks).toBeGreaterThan(10)
    expect(Object.keys(found(shop)).toSorted()).toEqual(skerry.steps.map(({ id }) => id).toSorted())
    expect(found(shop)).toEqual(askedAfterEach(shop))
    expect(timesRunsAreAsked(shop, found)).toBeLessThanOrEqual(2 * Object.keys(shop.state.runs).length)
    // Else each of its pulls would ask the run again, and a run of thousands takes seconds.
    expect(timesRunsAreAsked(shop, askedAfterEach)).toBeGreaterThan(shop.entries.length)
  })
})
