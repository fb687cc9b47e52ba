import { describe, expect, it } from 'vitest'
import { currentStep, isStepDone } from '../../../../core/builds/index.ts'
import { lastLivePull } from '../../../../core/tightening/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')

function shopAt(step: string): Workshop {
  const shop = new Workshop(skerry)
  shop.worksUpTo(step)
  return shop
}

const takeBackLast = (shop: Workshop, procedure: string) => ({
  type: 'take-back' as const,
  procedure,
  pull: lastLivePull(shop.state.runs[procedure])?.number ?? 0,
  notTurned: true as const,
  reason: 'wrong bolt',
})

describe('a run among the steps', () => {
  it('can be taken back pull by pull while nothing lies on top of it', () => {
    const shop = shopAt('flange-run')
    shop.does(takeBackLast(shop, 'case'))
    expect(currentStep(shop.spec, shop.state)?.id).toBe('case-run')
  })

  it('cannot be taken back under a later run, until that is taken back', () => {
    const shop = shopAt('flange-run')
    shop.does({ type: 'start-run', procedure: 'flange' })
    shop.goesOn()
    expect(shop.refusal(takeBackLast(shop, 'case'))).toMatchObject({
      code: 'step-on-top',
      facts: { step: 'Case bolts', top: 'Flange bolts', kind: 'run-procedure' },
    })
    shop.does(takeBackLast(shop, 'flange'))
    shop.does(takeBackLast(shop, 'case'))
  })

  it('cannot be taken back under a check that was good, until that is answered again', () => {
    const shop = shopAt('sump-on')
    expect(shop.refusal(takeBackLast(shop, 'flange'))).toMatchObject({
      code: 'step-on-top',
      facts: { step: 'Flange bolts', top: 'Turn crank', kind: 'check' },
    })
    shop.does({
      type: 'answer-check',
      step: 'turn-crank',
      good: false,
      reading: null,
      note: 'Bolt 12 was missed.',
    })
    shop.does(takeBackLast(shop, 'flange'))
  })

  it('hears of a problem after later steps are done, and holds up the end until it is answered', () => {
    const shop = shopAt('last-look')
    shop.does({ type: 'note-problem', procedure: 'case', fastener: 'case-3', text: 'Washer missing.' })
    expect(isStepDone(shop.spec, shop.state, shop.step('case-run'))).toBe(false)
    expect(currentStep(shop.spec, shop.state)?.id).toBe('case-run')
    shop.does({
      type: 'answer-flag',
      procedure: 'case',
      flag: 1,
      answer: 'Washer put in, bolt pulled again.',
    })
    while (!shop.state.finished) shop.goesOn()
  })

  it('is not pulled on while a check before it has turned out not to be good', () => {
    const shop = shopAt('case-run')
    shop.does({ type: 'start-run', procedure: 'case' })
    shop.goesOn()
    shop.does({ type: 'answer-check', step: 'rods-free', good: false, reading: null, note: '' })
    const pull = { type: 'pull', procedure: 'case', pass: 0, fastener: 'case-1', reading: null } as const
    expect(shop.refusal({ ...pull, moved: false, outOfOrder: null })).toMatchObject({
      code: 'step-before',
      facts: { step: 'Case bolts', first: 'Rods free' },
    })
  })

  it('that is paused can be resumed whatever happened before it, so that it can be taken back', () => {
    const shop = shopAt('case-run')
    for (let entry = 0; entry < 3; entry++) shop.goesOn()
    shop.does({ type: 'pause-run', procedure: 'case', reason: '' })
    shop.does({ type: 'answer-check', step: 'rods-free', good: false, reading: null, note: '' })
    shop.does({ type: 'resume-run', procedure: 'case' })
    expect(shop.state.runs.case?.paused).toBeNull()
    shop.does(takeBackLast(shop, 'case'))
    shop.does({ type: 'take-out-part', step: 'close-case', reason: 'A rod binds.' })
  })
})
