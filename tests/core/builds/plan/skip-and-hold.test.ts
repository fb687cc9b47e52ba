import { describe, expect, it } from 'vitest'
import { awaitsSecondPerson, buildSheet, stepStates } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const strath = demoEngine('strath-6')
const standsAt = (shop: Workshop, id: string) =>
  stepStates(strath, shop.state).find(({ step }) => step.id === id)?.state

function atTheFlange(): Workshop {
  const shop = new Workshop(strath)
  shop.worksThrough('turn-crank')
  return shop
}
const skip = { type: 'skip-step', step: 'flange-true', reason: 'Measured on the bare crank' } as const
const takeBack = { type: 'take-back-skip', step: 'flange-true', reason: 'The gauge is back' } as const

describe('a step that may be skipped', () => {
  it('lets the build go on and be finished without it, and stands on the sheet with its reason', () => {
    const shop = atTheFlange()
    shop.does(skip)
    expect(standsAt(shop, 'flange-true')).toBe('skipped')
    while (!shop.state.finished) shop.goesOn()
    const sheet = buildSheet(strath, shop.entries)
    const place = strath.steps.findIndex(({ id }) => id === 'flange-true') + 1
    expect(sheet.skipped).toMatchObject([
      {
        step: { name: 'Flange run-out', place },
        reason: 'Measured on the bare crank',
        person: 'Ada',
        takenBack: null,
      },
    ])
    expect(sheet.steps.find(({ name }) => name === 'Flange run-out')).toMatchObject({
      done: null,
      skipped: 'Measured on the bare crank',
    })
  })

  it('is not skipped without a reason, before its turn, once it is done, or twice', () => {
    const shop = new Workshop(strath)
    expect(shop.refuses(skip)).toContain('comes later')
    shop.worksThrough('turn-crank')
    expect(shop.refusal({ ...skip, reason: '.' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'step-skipped', step: 'Flange run-out' } },
    })
    shop.does(skip)
    expect(shop.refusal(skip)).toMatchObject({ code: 'step-skipped', facts: { step: 'Flange run-out' } })
    shop.does(takeBack)
    shop.does({ type: 'answer-check', step: 'flange-true', good: true, reading: null, note: '' })
    expect(shop.refuses(skip)).toContain('is done already')
  })

  it('is none that the spec does not name', () => {
    const shop = atTheFlange()
    expect(shop.refusal({ ...skip, step: 'turn-crank' })).toMatchObject({
      code: 'skip-not-allowed',
      facts: { step: 'Turn crank' },
    })
  })

  it('cannot be worked on while it is skipped', () => {
    const shop = atTheFlange()
    shop.does(skip)
    const good = { type: 'answer-check', step: 'flange-true', good: true, reading: null, note: '' } as const
    expect(shop.refuses(good)).toContain('is skipped')
  })

  it('is to be done after all while nothing stands on it; then only by doing it again', () => {
    const shop = atTheFlange()
    shop.does(skip)
    shop.does(takeBack)
    expect(standsAt(shop, 'flange-true')).toBe('open')
    shop.does(skip)
    while (standsAt(shop, 'last-look') !== 'done') shop.goesOn()
    expect(shop.refusal(takeBack)).toMatchObject({
      code: 'skip-stood-on',
      facts: { step: 'Flange run-out', top: 'Last check' },
    })
    shop.does({ type: 'redo-step', step: 'flange-true', reason: 'The gauge is back', opens: ['last-look'] })
    expect([standsAt(shop, 'flange-true'), standsAt(shop, 'last-look')]).toEqual(['open', 'waiting'])
    const { skipped } = buildSheet(strath, shop.entries)
    expect(skipped.map(({ takenBack: why }) => why?.reason)).toEqual([
      'The gauge is back',
      'The gauge is back',
    ])
  })
})

describe('a step that always holds for a second person', () => {
  it('stops the build of a mechanic too, until somebody else has looked', () => {
    const shop = new Workshop(strath)
    while (standsAt(shop, 'turn-crank') !== 'unconfirmed') shop.goesOn()
    expect(awaitsSecondPerson(strath, shop.state, shop.step('turn-crank'))).toBe(true)
    expect(shop.refusal({ type: 'fit-part', step: 'sump-on' })).toMatchObject({
      code: 'step-unconfirmed',
      facts: { step: 'Turn crank' },
    })
    shop.does({ type: 'confirm-step', step: 'turn-crank', second: 'Berit' })
    expect(standsAt(shop, 'turn-crank')).toBe('done')
    expect(buildSheet(strath, shop.entries).steps.find(({ name }) => name === 'Turn crank')).toMatchObject({
      done: { person: 'Ada' },
      second: { person: 'Berit' },
    })
  })

  it('holds again when it is done again', () => {
    const shop = atTheFlange()
    shop.does({ type: 'redo-step', step: 'turn-crank', reason: 'A bolt was loose', opens: [] })
    expect(standsAt(shop, 'turn-crank')).toBe('open')
    shop.goesOn()
    expect(standsAt(shop, 'turn-crank')).toBe('unconfirmed')
  })
})

describe('the sheet of a build in which steps were done again', () => {
  it('has both rounds: who did it first and when, why again, and what was open with it', () => {
    const shop = atTheFlange()
    const first = buildSheet(strath, shop.entries).steps.find(({ name }) => name === 'Flange bolts')!.done
    shop.person = 'Cai'
    shop.does({
      type: 'redo-step',
      step: 'flange-run',
      reason: 'Bolt 4 was oiled twice',
      opens: ['turn-crank'],
      takenApart: true,
    })
    shop.worksThrough('turn-crank')
    const sheet = buildSheet(strath, shop.entries)
    expect(sheet.redone).toMatchObject([
      {
        step: { name: 'Flange bolts' },
        done: first,
        reason: 'Bolt 4 was oiled twice',
        person: 'Cai',
        takenApart: true,
        opened: [{ step: { name: 'Turn crank' }, done: { person: 'Ada' } }],
      },
    ])
    const again = sheet.steps.find(({ name }) => name === 'Flange bolts')!
    expect(again).toMatchObject({ again: 1, done: { person: 'Cai' } })
    expect(again.done!.seq).toBeGreaterThan(first!.seq)
  })
})
