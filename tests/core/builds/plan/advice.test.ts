import { describe, expect, it } from 'vitest'
import {
  halfKey,
  openedAgain,
  sealantClock,
  stepStates,
  undoneAtBench,
} from '../../../../core/builds/index.ts'
import { nextCommand } from '../next-command.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')
const strath = demoEngine('strath-6')

const standsAt = (shop: Workshop, id: string) =>
  stepStates(shop.spec, shop.state).find(({ step }) => step.id === id)?.state
const notGood = { type: 'answer-check', good: false, reading: null, note: 'It drags' } as const
const good = { ...notGood, good: true, note: 'Dirt under the gauge' } as const

/** Everything the sentences of the plan tell a person to do is done to the letter, and leads where they say. */
describe('the advice when a step is done again', () => {
  const redo = { type: 'redo-step', step: 'fit-mains', reason: 'M2 was pinched' } as const

  it('“Take back in it what is wrong”: it is out, and the step goes on', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('fit-mains')
    shop.goesOn()
    const [half] = [...shop.state.fitted]
    expect(shop.refusal({ ...redo, opens: [] })).toMatchObject({
      code: 'redo-not-done',
      facts: { step: 'Main shells', isRead: false },
    })
    shop.does({ type: 'take-out-half', step: 'fit-mains', position: 'M1', half: 'upper', reason: 'Pinched' })
    expect([half, shop.state.fitted.size]).toEqual([halfKey('M1', 'upper'), 0])
    shop.worksThrough('fit-mains')
    expect(standsAt(shop, 'fit-mains')).toBe('done')
  })

  it('“Read or answer again in it what is wrong”: the last answer counts', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('turn-crank')
    shop.does({ ...notGood, step: 'turn-crank' })
    expect(shop.refusal({ ...redo, step: 'turn-crank', opens: [] })).toMatchObject({
      code: 'redo-not-done',
      facts: { step: 'Turn crank', isRead: true },
    })
    shop.does({ ...good, step: 'turn-crank' })
    expect(standsAt(shop, 'turn-crank')).toBe('done')
  })

  it('“Look at the list once more, then confirm”, and “undo at the bench what the list says … and say that it is undone”', () => {
    const shop = new Workshop(skerry)
    shop.worksThrough('case-run')
    expect(shop.refuses({ ...redo, opens: [] })).toMatch(/Look at the list once more, then confirm\.$/)
    const opened = openedAgain(skerry, shop.state, shop.step('fit-mains'))
    const seen = { ...redo, opens: opened.map(({ id }) => id) }
    const [first] = undoneAtBench(skerry, shop.state, shop.step('fit-mains'), opened)
    expect(first).toMatchObject({ deed: 'loosen', step: { name: 'Case bolts' } })
    expect(shop.refusal(seen)).toMatchObject({
      code: 'redo-not-taken-apart',
      facts: { step: 'Main shells', first: 'Case bolts' },
    })
    shop.does({ ...seen, takenApart: true })
    expect(shop.state.fitted.size).toBe(0)
    expect(opened.map(({ id }) => standsAt(shop, id)).filter((stands) => stands === 'done')).toEqual([])
    while (!shop.state.finished) shop.goesOn()
  })

  it('“Nothing stands on it any more. Look at it once more, then confirm.”', () => {
    const shop = new Workshop(skerry)
    shop.worksThrough('fit-mains')
    expect(shop.refusal({ ...redo, opens: ['lay-crank'], takenApart: true })).toMatchObject({
      code: 'redo-opens-others',
      facts: { step: 'Main shells', others: [] },
    })
    shop.does({ ...redo, opens: [], takenApart: true })
    expect(standsAt(shop, 'fit-mains')).toBe('open')
  })
})

describe('the advice when a step is skipped', () => {
  const skip = { type: 'skip-step', step: 'flange-true', reason: 'Measured on the bare crank' } as const
  const atTheFlange = () => {
    const shop = new Workshop(strath)
    shop.worksThrough('turn-crank')
    return shop
  }

  it('“Take that back first; then it can be worked on.”', () => {
    const shop = atTheFlange()
    shop.does(skip)
    expect(shop.refusal({ ...good, step: 'flange-true' })).toMatchObject({
      code: 'step-skipped',
      facts: { step: 'Flange run-out' },
    })
    shop.does({ type: 'take-back-skip', step: 'flange-true', reason: 'The gauge is back' })
    shop.does({ ...good, step: 'flange-true' })
    expect(standsAt(shop, 'flange-true')).toBe('done')
  })

  it('“The spec of this engine does not let it be skipped. Do it.”', () => {
    const shop = atTheFlange()
    shop.does(skip)
    expect(shop.refuses({ ...skip, step: 'pumps-in' })).toMatch(/Do it\.$/)
    shop.worksThrough('pumps-in')
    expect(standsAt(shop, 'pumps-in')).toBe('done')
  })

  it('“It cannot be skipped any more: finish it” of what was found not good', () => {
    const shop = atTheFlange()
    shop.does({ ...notGood, step: 'flange-true' })
    expect(shop.refusal(skip)).toMatchObject({
      code: 'step-begun',
      facts: { step: 'Flange run-out', isRead: true },
    })
    shop.does({ ...good, step: 'flange-true' })
    expect(standsAt(shop, 'flange-true')).toBe('done')
  })

  it('“Take back what was done in it; then it can be skipped” of places', () => {
    const steps = strath.steps.map((step) =>
      step.id === 'oil-mains' ? { ...step, mayBeSkipped: 'with-a-reason' as const } : step,
    )
    const shop = new Workshop({ ...strath, steps })
    shop.worksUpTo('oil-mains')
    const before = shop.state
    while (shop.state.placed === before.placed) shop.goesOn()
    const oiled = nextPlaceDone(shop)
    const skipOil = { ...skip, step: 'oil-mains', reason: 'Assembled dry for a trial' }
    expect(shop.refusal(skipOil)).toMatchObject({
      code: 'step-begun',
      facts: { step: 'Oil shells', isRead: false },
    })
    shop.does({ type: 'undo-place', step: 'oil-mains', ...oiled, reason: 'Wrong oil' })
    shop.does(skipOil)
    expect(standsAt(shop, 'oil-mains')).toBe('skipped')
  })

  it('“Do it again: that opens what stands on it.”', () => {
    const shop = atTheFlange()
    shop.does(skip)
    shop.worksThrough('last-look')
    expect(
      shop.refusal({ type: 'take-back-skip', step: 'flange-true', reason: 'The gauge is back' }),
    ).toMatchObject({ code: 'skip-stood-on', facts: { step: 'Flange run-out', top: 'Last check' } })
    const opens = openedAgain(strath, shop.state, shop.step('flange-true')).map(({ id }) => id)
    expect(opens).toContain('last-look')
    shop.does({
      type: 'redo-step',
      step: 'flange-true',
      reason: 'The gauge is back',
      opens,
      takenApart: true,
    })
    expect([standsAt(shop, 'flange-true'), standsAt(shop, 'last-look')]).toEqual(['open', 'waiting'])
  })
})

describe('the advice while a step waits for a second person', () => {
  it('“Call one over; then continue.”', () => {
    const shop = new Workshop(strath)
    while (standsAt(shop, 'turn-crank') !== 'unconfirmed') shop.goesOn()
    const next = { ...good, step: 'flange-true' } as const
    expect(shop.refuses(next)).toMatch(/Call one over; then continue\.$/)
    shop.does({ type: 'confirm-step', step: 'turn-crank', second: 'Berit' })
    shop.does(next)
    expect(standsAt(shop, 'flange-true')).toBe('done')
  })

  it('“It does not wait for a second person. Continue with the build.”', () => {
    const shop = new Workshop(strath)
    const look = { type: 'confirm-step', step: 'turn-crank', second: 'Berit' } as const
    expect(shop.refuses(look)).toMatch(/Continue with the build\.$/)
    const before = shop.entries.length
    shop.goesOn()
    expect(shop.entries.length).toBe(before + 1)
  })
})

describe('the advice once the open time is over', () => {
  /** Both beads laid at eight o'clock, with ten minutes of open time, the case closed, and that many bolts pulled late. */
  function late(pulls: number): Workshop {
    const shop = new Workshop(skerry)
    shop.worksUpTo('bead-plus')
    shop.now = '2026-03-09T08:00:00.000Z'
    shop.worksUpTo('case-run')
    while ((shop.state.runs['case']?.pulls.length ?? 0) < pulls) shop.goesOn()
    while (nextCommand(skerry, shop.state).type !== 'pull') shop.goesOn()
    shop.now = '2026-03-09T08:10:01.000Z'
    expect(shop.refuses(nextCommand(skerry, shop.state))).toMatch(
      /Take the joint apart, clean it and lay a new bead; or say why it is closed anyway\.$/,
    )
    return shop
  }
  const freshlyClosed = (shop: Workshop) => {
    expect(shop.state.beads).toEqual({})
    shop.worksThrough('bead-plus')
    expect(sealantClock(skerry, shop.state)?.laidAt).toBe(shop.now)
    shop.worksThrough('flange-run')
    const pulls = shop.entries.filter(({ event }) => event.type === 'fastener-pulled')
    expect(pulls.filter(({ event }) => 'overTime' in event)).toEqual([])
    expect(sealantClock(skerry, shop.state)).toBeNull()
  }

  it('“Take the joint apart, clean it and lay a new bead”, with bolts pulled: “Accept that” opens the beads', () => {
    const shop = late(2)
    const again = {
      type: 'restart-run',
      procedure: 'case',
      pass: 0,
      reason: 'Sealant open too long',
    } as const
    expect(shop.refusal(again)).toMatchObject({
      code: 'restart-opens-joint',
      facts: { steps: ['Close case', 'Bead gear side', 'Bead pump side'] },
    })
    shop.does({ ...again, jointOpened: true })
    freshlyClosed(shop)
  })

  it('the same before the first bolt: the upper case is taken off and both beads are wiped off', () => {
    const shop = late(0)
    const reason = 'Sealant open too long'
    expect(shop.refuses({ type: 'wipe-off-bead', step: 'bead-plus', reason })).toContain('Close case')
    shop.does({ type: 'take-out-part', step: 'close-case', reason })
    for (const step of ['bead-minus', 'bead-plus']) shop.does({ type: 'wipe-off-bead', step, reason })
    freshlyClosed(shop)
  })

  it('“or say why it is closed anyway”', () => {
    const shop = late(2)
    const pull = nextCommand(skerry, shop.state)
    if (pull.type !== 'pull') throw new Error(`${pull.type} is next`)
    shop.does({ ...pull, overTime: 'Looked at, still wet' })
    shop.worksThrough('flange-run')
    expect(standsAt(shop, 'flange-run')).toBe('done')
  })
})

function nextPlaceDone(shop: Workshop) {
  const entry = shop.entries.findLast(({ event }) => event.type === 'place-done')
  if (entry?.event.type !== 'place-done') throw new Error('no place is done')
  const { place, round } = entry.event
  return { place, round }
}
