import { describe, expect, it } from 'vitest'
import {
  buildSheet,
  isStepDone,
  mentionsOf,
  partsWanted,
  untickedAfter,
  usesAt,
  type BuildCommand,
} from '../../../../core/builds/index.ts'
import { checkRules } from '../../../../core/builds/index.ts'
import { noNames } from '../../../../core/engine/index.ts'
import { demoEngine, newBuild, Workshop } from '../workshop.ts'

const moor = demoEngine('moor-flat-4')

function shopAt(step: string): Workshop {
  const shop = new Workshop(moor)
  shop.worksUpTo(step)
  return shop
}

type Tick = Extract<BuildCommand, { type: 'tick-parts' }>
function tick(part: string, more: Partial<Tick> = {}): Tick {
  return {
    ...{ type: 'tick-parts', step: 'pistons-on', part, count: 1, condition: 'new', reason: '', number: '' },
    ...more,
  }
}
const leftAt = (shop: Workshop, step: string) =>
  Object.fromEntries(usesAt(shop.spec, shop.state, step).map(({ part, left }) => [part.id, left]))

describe('ticking parts as they are fitted', () => {
  it('counts down what is left, in as many ticks as one likes', () => {
    const shop = shopAt('pistons-on')
    expect(leftAt(shop, 'pistons-on')).toEqual({ pistons: 4, pins: 4, circlips: 8 })
    shop.does(tick('circlips', { count: 6 }))
    shop.does(tick('circlips', { count: 2, number: ' CL-20 ' }))
    expect(leftAt(shop, 'pistons-on')).toMatchObject({ circlips: 0 })
    expect(shop.entries.at(-1)!.event).toMatchObject({ number: 'CL-20', reason: null })
  })

  it('refuses more than there are, what is ticked, what the list does not have, and what belongs elsewhere', () => {
    const shop = shopAt('pistons-on')
    expect(shop.refusal(tick('pistons', { count: 5 }))).toMatchObject({
      code: 'parts-too-many',
      facts: { part: 'Piston', step: 'Pistons', count: 5, left: 4 },
    })
    shop.does(tick('pistons', { count: 4 }))
    expect(shop.refusal(tick('pistons'))).toMatchObject({
      code: 'parts-ticked-already',
      facts: { part: 'Piston', step: 'Pistons' },
    })
    expect(shop.refusal(tick('cam-chain'))).toMatchObject({
      code: 'part-unknown',
      facts: { part: 'cam-chain' },
    })
    expect(shop.refusal(tick('strainer'))).toMatchObject({
      code: 'part-not-in-step',
      facts: { part: 'Oil strainer', step: 'Pistons' },
    })
  })

  it('asks why a part goes in again that is to be new each time, and marks the build by it', () => {
    const shop = shopAt('pistons-on')
    const again = tick('circlips', { count: 8, condition: 'used-again' })
    expect(shop.refusal(again)).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'new-each-time', part: 'Circlip' } },
    })
    shop.does({ ...again, reason: 'No new ones on the boat.' })
    const entry = shop.entries.at(-1)!
    expect(entry.event).toMatchObject({ reason: 'No new ones on the boat.' })
    expect(mentionsOf(shop.spec, { ...noNames, byId: () => ['Circlip'] }, entry)).toContainEqual({
      kind: 'flag',
      word: 'circlip',
    })
  })

  it('takes a reusable part again without a reason, and past its number of builds with one', () => {
    const shop = shopAt('pistons-on')
    shop.does(tick('pistons', { count: 4, condition: 'used-again' }))
    expect(shop.entries.at(-1)!.event).toMatchObject({ condition: 'used-again', reason: null })
    shop.does(tick('pins', { count: 3, condition: 'used-again', before: 1 }))
    const worn = tick('pins', { condition: 'used-again', before: 2 })
    expect(shop.refusal(worn)).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'used-up', part: 'Piston pin' } },
    })
    shop.does({ ...worn, reason: 'measured, like new' })
  })

  it('waits for the steps before, as all work does', () => {
    expect(new Workshop(moor).refuses(tick('pistons'))).toContain('comes later')
  })

  it('is taken back with a reason, and falls away when the part comes out', () => {
    const shop = shopAt('pistons-on')
    shop.does(tick('pistons', { count: 4 }))
    const back = { type: 'remove-ticks', step: 'pistons-on', part: 'pistons', reason: '' } as const
    expect(shop.refusal(back)).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'ticks-removed', part: 'Piston' } },
    })
    shop.does({ ...back, reason: 'pressed too soon' })
    expect(shop.refusal({ ...back, reason: 'again' })).toMatchObject({
      code: 'parts-not-ticked',
      facts: { part: 'Piston', step: 'Pistons' },
    })
    shop.worksThrough('pistons-on')
    expect(leftAt(shop, 'pistons-on')).toMatchObject({ circlips: 0 })
    shop.does({ type: 'take-out-part', step: 'pistons-on', reason: 'a rail is bent' })
    expect(leftAt(shop, 'pistons-on')).toEqual({ pistons: 4, pins: 4, circlips: 8 })
  })
})

describe('parts of a step that is done place by place', () => {
  const rings = () => moor.parts.find(({ usedIn }) => usedIn.some(({ step }) => step === 'rings-on'))!
  const asked = (shop: Workshop, step: string) =>
    untickedAfter(moor, shop.state, shop.step(step)).map(({ part }) => part.id)

  it('are asked for once its work is done, until they are ticked', () => {
    const shop = shopAt('rings-on')
    for (const { cylinder } of moor.ringSets[0]!.pistons) {
      expect(asked(shop, 'rings-on')).toEqual([])
      shop.does({ type: 'fit-rings', step: 'rings-on', cylinder, others: [] })
    }
    const { id: part } = rings()
    expect(asked(shop, 'rings-on')).toContain(part)
    const { left } = usesAt(moor, shop.state, 'rings-on').find((use) => use.part.id === part)!
    shop.does(tick(part, { step: 'rings-on', count: left }))
    expect(asked(shop, 'rings-on')).not.toContain(part)
  })

  it('are not asked for where a part goes in and somebody ticks later, nor in a finished build', () => {
    const shop = shopAt('pistons-on')
    shop.does({ type: 'fit-part', step: 'pistons-on' })
    expect(asked(shop, 'pistons-on')).toEqual([])
    while (!shop.state.finished) shop.goesOn()
    expect(moor.steps.flatMap(({ id }) => asked(shop, id))).toEqual([])
  })
})

describe('counting what is left over', () => {
  /** Everything but one circlip is ticked. */
  function counting(): Workshop {
    const shop = shopAt('pistons-on')
    shop.does(tick('circlips', { count: 7 }))
    shop.does({ type: 'fit-part', step: 'pistons-on' })
    for (const part of ['pistons', 'pins']) shop.does(tick(part, { count: 4 }))
    shop.worksUpTo('count')
    return shop
  }

  it('asks for each part that is not ticked, by step and number', () => {
    const shop = counting()
    const count = { type: 'count-parts', step: 'count' } as const
    expect(shop.refusal(count)).toMatchObject({
      code: 'part-unaccounted',
      facts: { part: 'Circlip', step: 'Pistons', left: 1 },
    })
    const left = { type: 'leave-over', step: 'count', part: 'circlips', usedIn: 'pistons-on' } as const
    expect(shop.refusal({ ...left, reason: '' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'part-left-over', part: 'Circlip' } },
    })
    shop.does({ ...left, reason: 'one pin has a collar' })
    expect(shop.refusal(count)).toMatchObject({
      code: 'part-unaccounted',
      facts: { part: 'Drain plug washer', step: 'Sump screws', left: 1 },
    })
    shop.does(tick('drain-washer', { step: 'sump-run' }))
    shop.does(count)
    expect(isStepDone(shop.spec, shop.state, shop.step('count'))).toBe(true)
    expect(shop.refuses(count)).toContain('is done already')
  })

  it('is open again as soon as a part is taken back', () => {
    const shop = counting()
    shop.worksThrough('count')
    shop.does({ type: 'remove-ticks', step: 'pistons-on', part: 'circlips', reason: 'one lies on the floor' })
    expect(isStepDone(shop.spec, shop.state, shop.step('count'))).toBe(false)
    expect(shop.refusal({ type: 'finish-build' })).toMatchObject({
      code: 'steps-left',
      facts: { first: 'Count parts' },
    })
  })
})

describe('what has to be got', () => {
  it('is every part that is not fitted yet, and the bolts that are new each time', () => {
    const shop = new Workshop(moor)
    const wanted = partsWanted(shop.spec, shop.state)
    expect(wanted).toHaveLength(moor.parts.length + 1)
    expect(wanted.at(-1)).toMatchObject({ kind: 'fasteners', name: 'Rod bolts', count: 8, place: 'Big ends' })
    shop.worksThrough('pistons-on')
    const left = partsWanted(shop.spec, shop.state).map(({ name, count }) => `${count} ${name}`)
    expect(left).toEqual(['4 Barrel gasket', '1 Oil strainer', '2 Sump gasket', '1 Drain plug washer'])
  })
})

describe('on the sheet', () => {
  it('each part has what was said of it, and a single-use one that was used again has its reason', () => {
    const shop = shopAt('pistons-on')
    shop.does(tick('circlips', { count: 8, condition: 'used-again', reason: 'none on the boat' }))
    const { parts } = buildSheet(shop.spec, shop.entries)
    const circlips = parts.find(({ name }) => name === 'Circlip')!
    expect(circlips.open).toBe(0)
    expect(circlips.ticks).toMatchObject([
      {
        step: 'Pistons',
        count: 8,
        condition: 'used-again',
        reason: 'none on the boat',
        stamp: { person: 'Ada' },
      },
    ])
    expect(parts.find(({ name }) => name === 'Barrel gasket')).toMatchObject({ open: 4, ticks: [] })
  })

  it('a build with all of it keeps the rules by which it came about', () => {
    const shop = shopAt('pistons-on')
    shop.does(tick('pins', { count: 4, condition: 'used-again', before: 2, reason: 'measured, like new' }))
    shop.does(tick('pistons', { count: 1 }))
    shop.does({ type: 'remove-ticks', step: 'pistons-on', part: 'pistons', reason: 'pressed too soon' })
    shop.does({ type: 'fit-part', step: 'pistons-on' })
    shop.worksUpTo('count')
    const ofCirclips = { part: 'circlips', usedIn: 'pistons-on', reason: 'lost, engine searched' }
    shop.does({ type: 'leave-over', step: 'count', ...ofCirclips })
    while (!shop.state.finished) shop.goesOn()
    const check = checkRules(shop.spec, newBuild.specSha256, shop.entries)
    let turn = check.next()
    while (!turn.done) turn = check.next()
    expect(turn.value).toBeNull()
  })
})
