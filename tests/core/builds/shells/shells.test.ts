import { describe, expect, it } from 'vitest'
import { proposalsFor } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')
const grades = (shop: Workshop) =>
  shop.state.shells['mains']?.map(({ position, half, grade }) => `${position} ${half} ${grade}`)

/** Marks of case and crank noted: the chart gives T for 1 with H, 2 with G and 3 with F. */
function marked(): Workshop {
  const shop = new Workshop(skerry)
  shop.does({ type: 'note-marks', step: 'case-marks', typed: '1 2 3 2' })
  shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'HGFG' })
  return shop
}

describe('noting marks', () => {
  it('keeps them in the order of the saddles, and as typed', () => {
    const shop = new Workshop(skerry)
    const [event] = shop.does({ type: 'note-marks', step: 'case-marks', typed: ' 1,2, 3 ? ' })
    expect(event).toMatchObject({ type: 'marks-noted', part: 'housing', typed: ' 1,2, 3 ? ' })
    expect(shop.state.marks['mains']).toEqual({ housing: ['1', '2', '3', null], journal: null })
  })

  it('refuses an unknown mark and too few marks, and notes nothing', () => {
    const shop = new Workshop(skerry)
    expect(shop.refusal({ type: 'note-marks', step: 'case-marks', typed: '1 2 9 1' })).toMatchObject({
      code: 'mark-unknown',
      facts: { position: 'M3', part: 'Case', mark: '9', known: ['1', '2', '3'] },
    })
    expect(shop.refusal({ type: 'note-marks', step: 'case-marks', typed: '1 2' })).toMatchObject({
      code: 'marks-too-few',
      facts: { part: 'Case', read: 2, expected: 4 },
    })
    expect(shop.state.marks).toEqual({})
  })

  it('again makes a choice by the old marks fall away; the old entry stays', () => {
    const shop = marked()
    shop.does({ type: 'choose-shells', step: 'choose-mains', others: [] })
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1 2 3 1' })
    expect(shop.state.shells['mains']).toBeUndefined()
    expect(shop.entries.filter(({ event }) => event.type === 'shells-chosen')).toHaveLength(1)
  })

  it('again as they were keeps the choice', () => {
    const shop = marked()
    shop.does({ type: 'choose-shells', step: 'choose-mains', others: [] })
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1232' })
    expect(grades(shop)).toHaveLength(8)
  })

  it('is over once a shell is in place, until it is taken out again', () => {
    const shop = marked()
    shop.does({ type: 'choose-shells', step: 'choose-mains', others: [] })
    shop.does({ type: 'fit-half', step: 'fit-mains', position: 'M2', half: 'lower' })
    const sentence =
      'M2: the lower half is in place. Take out all shells of this fit before changing marks or shells.'
    expect(shop.refuses({ type: 'note-marks', step: 'case-marks', typed: '1 2 3 1' })).toBe(sentence)
    expect(shop.refuses({ type: 'choose-shells', step: 'choose-mains', others: [] })).toBe(sentence)
    // The big ends are another fit.
    shop.does({ type: 'note-marks', step: 'rod-marks', typed: '4 4 5' })
    const reason = 'wrong drawer'
    shop.does({ type: 'take-out-half', step: 'fit-mains', position: 'M2', half: 'lower', reason })
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1 2 3 1' })
  })
})

describe('choosing shells', () => {
  it('takes the proposal as it stands', () => {
    const shop = marked()
    shop.does({ type: 'choose-shells', step: 'choose-mains', others: [] })
    expect(shop.state.shells['mains']?.[0]).toEqual({
      position: 'M1',
      half: 'upper',
      grade: 'T',
      by: 'chart',
      reason: null,
    })
    expect(grades(shop)).toEqual([
      'M1 upper T',
      'M1 lower T',
      'M2 upper T',
      'M2 lower T',
      'M3 upper T',
      'M3 lower T',
      'M4 upper T',
      'M4 lower T',
    ])
  })

  it('takes a neighbouring grade for one half with a reason', () => {
    const shop = marked()
    const other = {
      position: 'M2',
      half: 'lower',
      grade: 'U',
      reason: 'Only one T left in the tray.',
    } as const
    shop.does({ type: 'choose-shells', step: 'choose-mains', others: [other] })
    expect(shop.state.shells['mains']?.[3]).toEqual({ ...other, by: 'person' })
  })

  it('refuses another grade without a reason', () => {
    const shop = marked()
    const others = [{ position: 'M2', half: 'lower', grade: 'U', reason: '' }] as const
    expect(shop.refusal({ type: 'choose-shells', step: 'choose-mains', others: [...others] })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'other-shell', position: 'M2', half: 'lower', grade: 'U' } },
    })
  })

  it('refuses a pair that the mixing rule of the engine forbids', () => {
    const shop = marked()
    const reason = 'Nothing else in the tray.'
    const choose = (half: 'upper' | 'lower', grade: string) =>
      shop.refusal({
        type: 'choose-shells',
        step: 'choose-mains',
        others: [{ position: 'M2', half, grade, reason }],
      })
    // Thinnest with thickest, and the thicker wall in the half that must take the thinner.
    expect(choose('lower', 'V')).toMatchObject({
      code: 'pair-not-allowed',
      facts: { position: 'M2', upper: 'T', lower: 'V' },
    })
    expect(choose('upper', 'U')).toMatchObject({
      code: 'pair-not-allowed',
      facts: { position: 'M2', upper: 'U', lower: 'T' },
    })
  })

  it('refuses an unknown grade and a bearing that the fit does not have', () => {
    const shop = marked()
    const choose = (position: string, grade: string) =>
      shop.refusal({
        type: 'choose-shells',
        step: 'choose-mains',
        others: [{ position, half: 'upper', grade, reason: 'from the other box' }],
      })
    expect(choose('M2', 'Z')).toMatchObject({
      code: 'grade-unknown',
      facts: { place: 'M2', grade: 'Z', known: ['R', 'S', 'T', 'U', 'V'] },
    })
    expect(choose('B1', 'T')).toMatchObject({ code: 'position-not-in-fit', facts: { position: 'B1' } })
  })

  it('asks for a decision where a mark is worn away, and takes it with a reason', () => {
    const shop = marked()
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1 2 ? 2' })
    expect(shop.refusal({ type: 'choose-shells', step: 'choose-mains', others: [] })).toMatchObject({
      code: 'shell-undecided',
      facts: { position: 'M3', half: 'upper' },
    })
    const reason = 'Bore measured 58.012.'
    shop.does({
      type: 'choose-shells',
      step: 'choose-mains',
      others: [
        { position: 'M3', half: 'upper', grade: 'S', reason },
        { position: 'M3', half: 'lower', grade: 'S', reason },
      ],
    })
    expect(shop.state.shells['mains']?.filter(({ by }) => by === 'person')).toHaveLength(2)
  })

  it('may be done again until a shell is in place', () => {
    const shop = marked()
    shop.does({ type: 'choose-shells', step: 'choose-mains', others: [] })
    const other = { position: 'M4', half: 'lower', grade: 'U', reason: 'T is out of stock.' } as const
    shop.does({ type: 'choose-shells', step: 'choose-mains', others: [other] })
    expect(grades(shop)?.at(-1)).toBe('M4 lower U')
  })

  it('has nothing to propose while marks of a part are missing', () => {
    const shop = new Workshop(skerry)
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1232' })
    expect(proposalsFor(shop.spec, shop.state, 'mains')).toEqual([])
  })
})
