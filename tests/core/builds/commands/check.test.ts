import { describe, expect, it } from 'vitest'
import { currentStep, stepStates } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')

function shopAt(step: string): Workshop {
  const shop = new Workshop(skerry)
  shop.worksUpTo(step)
  return shop
}

/** End float of the crank, 0.08 to 0.20 mm. */
const endFloat = (reading: string | null, good = true) => ({
  type: 'answer-check' as const,
  step: 'end-float',
  good,
  reading,
  note: '',
})
const verdict = (shop: Workshop) => shop.state.checks['end-float']?.verdict

describe('a check with a reading', () => {
  it.each([
    ['0.08', 80_000, 'good'],
    ['0,20 mm', 200_000, 'good'],
    ['0.0079 in', 200_660, 'not-good'],
    ['0.005 in', 127_000, 'good'],
    ['0.079', 79_000, 'not-good'],
    ['210 µm', 210_000, 'not-good'],
  ])('of %s is %i nm and %s: both limits are allowed', (typed, length_nm, expected) => {
    const shop = shopAt('end-float')
    shop.does(endFloat(typed))
    expect(shop.state.checks['end-float']).toEqual({
      verdict: expected,
      reading: { typed, length_nm },
      note: '',
    })
  })

  it('is not done by a reading outside, and is done when it is answered good later', () => {
    const shop = shopAt('end-float')
    shop.does(endFloat('0.35'))
    expect(currentStep(shop.spec, shop.state)?.id).toBe('end-float')
    expect(shop.refusal(endFloat('0.15'))).toMatchObject({
      code: 'check-good-why',
      facts: { step: 'End float' },
    })
    shop.does({ ...endFloat('0.15'), note: 'Thicker washers' })
    expect(currentStep(shop.spec, shop.state)?.id).toBe('fit-rod-shells')
    expect(shop.entries.filter(({ event }) => event.type === 'check-answered')).toHaveLength(2)
  })

  it('is not good when a person says so, whatever the reading', () => {
    const shop = shopAt('end-float')
    shop.does(endFloat('0.15', false))
    expect(verdict(shop)).toBe('not-good')
  })

  it('cannot be good without a reading, but can be not good', () => {
    const shop = shopAt('end-float')
    expect(shop.refusal(endFloat(null))).toMatchObject({
      code: 'check-reading-missing',
      facts: { step: 'End float' },
    })
    shop.does(endFloat(null, false))
    expect(verdict(shop)).toBe('not-good')
  })

  it.each([
    ['', 'Nothing was typed'],
    ['abc', 'is not a number'],
    ['-0.1', 'below zero'],
    ['0.1 N·m', 'The unit of “0.1 N·m” is not known here'],
  ])('refuses “%s” in a sentence', (typed, words) => {
    expect(shopAt('end-float').refuses(endFloat(typed))).toContain(words)
  })
})

describe('a check by feel', () => {
  const free = (good: boolean, note = '') => ({
    type: 'answer-check' as const,
    step: 'rods-free',
    good,
    reading: null,
    note,
  })

  it('is good or not good, with a note', () => {
    const shop = shopAt('rods-free')
    shop.does(free(false, ' Rod 2 binds. '))
    expect(shop.state.checks['rods-free']).toEqual({
      verdict: 'not-good',
      reading: null,
      note: 'Rod 2 binds.',
    })
    shop.does(free(true, 'Cap turned round'))
    expect(shop.state.checks['rods-free']?.verdict).toBe('good')
  })

  it('takes no reading', () => {
    expect(shopAt('rods-free').refusal({ ...free(true), reading: '0.1' })).toMatchObject({
      code: 'check-without-reading',
      facts: { step: 'Rods free' },
    })
  })
})

describe('a check that turns out not to be good after all', () => {
  it('is open again, what follows waits, and what is done stays in the record', () => {
    const shop = shopAt('turn-crank')
    shop.does({ ...endFloat(null, false), note: 'The gauge was off.' })
    const states = new Map(stepStates(shop.spec, shop.state).map(({ step, state }) => [step.id, state]))
    expect(states.get('end-float')).toBe('open')
    expect(states.get('case-run')).toBe('done')
    expect(states.get('turn-crank')).toBe('waiting')
    shop.does({ ...endFloat('0.1'), note: 'Measured again' })
    expect(currentStep(shop.spec, shop.state)?.id).toBe('turn-crank')
  })

  it('can be called so even while an earlier check is not good', () => {
    const shop = shopAt('turn-crank')
    shop.does(endFloat(null, false))
    shop.does({ type: 'answer-check', step: 'rods-free', good: false, reading: null, note: '' })
    expect(
      shop.refusal({ type: 'answer-check', step: 'rods-free', good: true, reading: null, note: '' }),
    ).toMatchObject({ code: 'step-before', facts: { step: 'Rods free', first: 'End float' } })
  })
})
