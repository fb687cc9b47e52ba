import { describe, expect, it } from 'vitest'
import { currentStep, stepStates } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')
const current = (shop: Workshop) => currentStep(shop.spec, shop.state)?.id
const stateOf = (shop: Workshop, id: string) =>
  stepStates(shop.spec, shop.state).find(({ step }) => step.id === id)

describe('the steps of a build', () => {
  it('are open at the start where nothing comes before, and wait elsewhere', () => {
    const shop = new Workshop(skerry)
    const open = stepStates(shop.spec, shop.state).filter(({ state }) => state === 'open')
    expect(open.map(({ step }) => step.id)).toEqual(['case-marks', 'crank-marks', 'rod-marks', 'pin-marks'])
  })

  it('say what they wait for: the steps that can be done now, not all in between', () => {
    const shop = new Workshop(skerry)
    expect(stateOf(shop, 'fit-mains')).toMatchObject({
      state: 'waiting',
      waitingFor: ['case-marks', 'crank-marks'],
    })
    shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'FGHF' })
    expect(stateOf(shop, 'fit-mains')).toMatchObject({ state: 'waiting', waitingFor: ['case-marks'] })
  })

  it('are taken up where they were left, not at the first that is open', () => {
    const shop = new Workshop(skerry)
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1231' })
    shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'FGHF' })
    expect(current(shop)).toBe('rod-marks')
    shop.does({ type: 'choose-shells', step: 'choose-mains', others: [] })
    shop.does({ type: 'fit-half', step: 'fit-mains', position: 'M3', half: 'lower' })
    expect(current(shop)).toBe('fit-mains')
  })

  it('lead to the first that is open once the current one is done', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('bead-plus')
    shop.does({ type: 'lay-bead', step: 'bead-minus' })
    expect(current(shop)).toBe('bead-plus')
  })

  it('lead back into a run in the middle of a pass', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('case-run')
    for (let entry = 0; entry < 14; entry++) shop.goesOn()
    expect(current(shop)).toBe('case-run')
    // Started, declared new, and twelve pulls: eight by hand and four of eight torqued.
    expect(shop.state.runs['case']?.pulls).toHaveLength(12)
  })

  it('that wait refuse to be worked on, and say which comes first', () => {
    const shop = new Workshop(skerry)
    const sentence = '“Close case” comes later. Do “Case marks” first.'
    expect(shop.refuses({ type: 'fit-part', step: 'close-case' })).toBe(sentence)
    expect(shop.refusal({ type: 'start-run', procedure: 'case' })).toMatchObject({
      code: 'step-before',
      facts: { step: 'Case bolts', first: 'Case marks' },
    })
    expect(
      shop.refusal({ type: 'answer-check', step: 'rods-free', good: true, reading: null, note: '' }),
    ).toMatchObject({ code: 'step-before', facts: { step: 'Rods free', first: 'Case marks' } })
    expect(shop.refusal({ type: 'lay-bead', step: 'bead-plus' })).toMatchObject({
      code: 'step-before',
      facts: { step: 'Bead pump side', first: 'Case marks' },
    })
    expect(shop.refuses({ type: 'choose-shells', step: 'choose-mains', others: [] })).toContain(
      'comes later.',
    )
    expect(
      shop.refusal({ type: 'fit-half', step: 'fit-mains', position: 'M1', half: 'upper' }),
    ).toMatchObject({ code: 'step-before', facts: { step: 'Main shells', first: 'Case marks' } })
  })

  it('that are not there, or are of another kind, are refused', () => {
    const shop = new Workshop(skerry)
    const sentence = (id: string) => `This engine has no such step “${id}”. Choose one of its steps.`
    expect(shop.refuses({ type: 'fit-part', step: 'head-on' })).toBe(sentence('head-on'))
    expect(shop.refuses({ type: 'fit-part', step: 'case-marks' })).toBe(sentence('case-marks'))
    expect(shop.refuses({ type: 'start-run', procedure: 'head' })).toContain('no procedure “head”')
  })
})

describe('finishing a build', () => {
  it('is refused until every step is done, and says which is not', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('last-look')
    expect(shop.refusal({ type: 'finish-build' })).toMatchObject({
      code: 'steps-left',
      facts: { first: 'Last check' },
    })
    shop.goesOn()
    shop.does({ type: 'finish-build' })
    expect(shop.state.finished).toBe(true)
  })

  it('is the end: nothing is added after it', () => {
    const shop = new Workshop(skerry)
    while (!shop.state.finished) shop.goesOn()
    const sentence =
      '“Pump at the lower lock” is finished. Its work cannot be changed; amend it, or start a new build.'
    expect(shop.refuses({ type: 'finish-build' })).toBe(sentence)
    expect(shop.refuses({ type: 'note-problem', procedure: 'case', fastener: null, text: 'It leaks.' })).toBe(
      sentence,
    )
    expect(
      shop.refuses({ type: 'answer-check', step: 'last-look', good: false, reading: null, note: '' }),
    ).toBe(sentence)
  })
})
