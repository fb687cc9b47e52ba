import { describe, expect, it } from 'vitest'
import {
  askedPlaces,
  buildSheet,
  checkRules,
  measureName,
  ringGapAdvice,
  type BuildCommand,
} from '../../../../core/builds/index.ts'
import { ringMeasures } from '../../../../core/engine/index.ts'
import { inMillimetres, millimetres } from '../../../../core/quantity/index.ts'
import { en } from '../../../../core/words/index.ts'
import { demoEngine, newBuild, Workshop } from '../workshop.ts'

const moor = demoEngine('moor-flat-4')
const holm = demoEngine('holm-2')
const top1 = { step: 'ring-gaps', measure: 'top', at: 'Barrel 1' } as const
const measured = (typed: string, sure?: true): BuildCommand => ({
  ...{ type: 'measure-limit', ...top1, typed },
  ...(sure && { sure }),
})

function shopAt(step: string): Workshop {
  const shop = new Workshop(moor)
  shop.worksUpTo(step)
  return shop
}

function isByRules(shop: Workshop): boolean {
  const check = checkRules(shop.spec, newBuild.specSha256, shop.entries)
  let turn = check.next()
  while (!turn.done) turn = check.next()
  return turn.value === null
}

describe('the gap of a ring', () => {
  const { new: limits, service } = {
    new: { least: millimetres(0.3), most: millimetres(0.45) },
    service: { most: millimetres(0.9) },
  }
  const advised = (gap: number) => {
    const advice = ringGapAdvice({ new: limits, service }, millimetres(gap))
    if (advice === null) return null
    return advice.what === 'file'
      ? ['file', inMillimetres(advice.least), advice.most && inMillimetres(advice.most)]
      : ['replace', inMillimetres(advice.by), inMillimetres(advice.boreWiderBy)]
  }

  it('that is too narrow is filed: 0.22 mm by 0.08 mm at least, and by 0.23 mm at most', () => {
    expect(advised(0.22)).toEqual(['file', 0.08, 0.23])
    expect(advised(0.3)).toBeNull()
  })

  it('that is too wide asks for the bore: 0.9425 mm more would be 0.3 mm of wear, because it grows by π times the bore', () => {
    expect(advised(0.9)).toBeNull()
    const [what, by, wider] = advised(0.45 + 0.942478)!
    expect([what, by]).toEqual(['replace', 0.942478])
    expect(wider).toBeCloseTo(0.3, 6)
  })

  it('is never accepted too narrow; filed and measured again it is right, and the last reading counts', () => {
    const shop = shopAt('ring-gaps')
    shop.does(measured('0.22'))
    expect(shop.refusal({ type: 'accept-measured', ...top1, reason: 'it will wear' })).toMatchObject({
      code: 'ring-too-tight',
      facts: { name: 'Top ring', place: 'Barrel 1' },
    })
    shop.does(measured('0.31'))
    const rows = buildSheet(moor, shop.entries).limits
    expect(rows.map(({ reading, counts, verdict }) => [reading.typed, counts, verdict])).toEqual([
      ['0.22', false, 'outside'],
      ['0.31', true, 'new'],
    ])
    expect(isByRules(shop)).toBe(true)
  })

  it('of 0, or below, is no reading', () => {
    const shop = shopAt('ring-gaps')
    expect(shop.refusal(measured('0'))).toMatchObject({ code: 'ring-gap-zero', facts: { place: 'Barrel 1' } })
    expect(shop.refusal(measured('0', true))).toMatchObject({
      code: 'ring-gap-zero',
      facts: { place: 'Barrel 1' },
    })
    expect(shop.refuses(measured('-0.3'))).toMatch(/\.$/)
  })

  it('typed in the wrong unit is not filed by: it is asked about, and taken when it is meant so', () => {
    const shop = shopAt('ring-gaps')
    expect(shop.refusal(measured('0.4 in'))).toMatchObject({
      code: 'ring-gap-other-unit',
      facts: {
        name: 'Top ring',
        typed: '0.4 in',
        is: { amount: 10.16, decimals: 3, isShort: false, unit: 'mm' },
        meant: { amount: 0.4, decimals: 4, isShort: true, unit: 'mm' },
        inMillimetres: { amount: 0.4, decimals: 3, isShort: false, unit: 'mm' },
      },
    })
    expect(shop.refusal(measured('0.016'))).toMatchObject({
      code: 'ring-gap-other-unit',
      facts: {
        name: 'Top ring',
        typed: '0.016',
        is: { amount: 0.016, decimals: 3, isShort: false, unit: 'mm' },
        meant: { amount: 0.016, decimals: 4, isShort: true, unit: 'in' },
        inMillimetres: { amount: 0.406, decimals: 3, isShort: false, unit: 'mm' },
      },
    })
    expect(shop.refusal(measured('16'))).toMatchObject({
      code: 'ring-gap-other-unit',
      facts: {
        name: 'Top ring',
        typed: '16',
        is: { amount: 16, decimals: 3, isShort: false, unit: 'mm' },
        meant: { amount: 16, decimals: 4, isShort: true, unit: 'thou' },
        inMillimetres: { amount: 0.406, decimals: 3, isShort: false, unit: 'mm' },
      },
    })
    expect(shop.refusal(measured('60 mm'))).toMatchObject({
      code: 'ring-gap-impossible',
      facts: {
        name: 'Top ring',
        typed: '60 mm',
        is: { amount: 60, decimals: 3, isShort: false, unit: 'mm' },
        bore: { amount: 90, decimals: 1, isShort: false, unit: 'mm' },
        widest: { amount: 5.4, decimals: 1, isShort: false, unit: 'mm' },
      },
    })
    shop.does(measured('0.016', true))
    shop.does(measured('0.016 in'))
    expect(isByRules(shop)).toBe(true)
  })

  it('by the bore is a share of its diameter, and never less than the minimum', () => {
    const set = holm.ringSets[0]!
    const limitsIn = (bore: number) =>
      ringMeasures(set, millimetres(bore))
        .filter(({ what }) => what === 'ring-gap')
        .map(({ new: { least, most } }) => [inMillimetres(least!), inMillimetres(most!)])
    // 78 mm × 0.0035 = 0.273; × 0.0055 = 0.429. 78 × 0.003 = 0.234, and the minimum is 0.25.
    expect(limitsIn(78)).toEqual([
      [0.273, 0.429],
      [0.312, 0.468],
      [0.25, 0.468],
    ])
  })

  it('and its place in the groove are asked of each ring that has limits, by their own names', () => {
    const shop = shopAt('ring-gaps')
    const step = shop.step('ring-gaps')
    if (step.kind !== 'measure-rings') throw new Error('another kind')
    const asked = askedPlaces(moor, shop.state, step)
    expect(asked).toHaveLength(4 * 5)
    expect([...new Set(asked.map(({ measure }) => measureName(en, measure)))]).toEqual([
      'Top ring, end gap',
      'Top ring in its groove',
      'Second ring, end gap',
      'Upper rail, end gap',
      'Lower rail, end gap',
    ])
  })
})

describe('rings on their pistons', () => {
  const fit = (cylinder: number, others: readonly { ring: string; typed: string }[] = []): BuildCommand => ({
    ...{ type: 'fit-rings', step: 'rings-on', cylinder },
    others: [...others],
  })

  it('are confirmed piston by piston, with where their gaps stand', () => {
    const shop = shopAt('rings-on')
    const [event] = shop.does(fit(2, [{ ring: 'second', typed: '210' }]))
    expect(event).toMatchObject({
      type: 'rings-fitted',
      gaps: [
        { ring: 'top', degrees: 45 },
        { ring: 'second', degrees: 210 },
        { ring: 'upper-rail', degrees: 315 },
        { ring: 'expander', degrees: 225 },
        { ring: 'lower-rail', degrees: 135 },
      ],
    })
    expect(shop.refusal(fit(2))).toMatchObject({
      code: 'rings-fitted-already',
      facts: { piston: 'Piston 2' },
    })
    expect(isByRules(shop)).toBe(true)
  })

  it('are refused with gaps in line, over the pin, on a thrust side, past a turn, of a ring or piston that is not there', () => {
    const shop = shopAt('rings-on')
    const second = (typed: string) => fit(1, [{ ring: 'second', typed }])
    expect(shop.refusal(second('60'))).toMatchObject({
      code: 'gaps-lie-in-line',
      facts: {
        piston: 'Piston 1',
        first: 'Top ring',
        second: 'Second ring',
        apart: { amount: 15, decimals: 1, isShort: true, unit: '°' },
        least: { amount: 60, decimals: 1, isShort: true, unit: '°' },
      },
    })
    expect(shop.refusal(second('190'))).toMatchObject({
      code: 'gap-badly-placed',
      facts: {
        piston: 'Piston 1',
        ring: 'Second ring',
        where: 'over-pin',
        apart: { amount: 10, decimals: 1, isShort: true, unit: '°' },
        least: { amount: 30, decimals: 1, isShort: true, unit: '°' },
      },
    })
    expect(shop.refusal(second('250'))).toMatchObject({
      code: 'gap-badly-placed',
      facts: {
        piston: 'Piston 1',
        ring: 'Second ring',
        where: 'on-thrust',
        apart: { amount: 20, decimals: 1, isShort: true, unit: '°' },
        least: { amount: 30, decimals: 1, isShort: true, unit: '°' },
      },
    })
    expect(shop.refusal(second('360'))).toMatchObject({
      code: 'angle-past-turn',
      facts: { ring: 'Second ring' },
    })
    expect(shop.refuses(second('wide'))).toMatch(/\.$/)
    expect(shop.refusal(fit(1, [{ ring: 'fourth', typed: '20' }]))).toMatchObject({
      code: 'ring-unknown',
      facts: { piston: 'Piston 1', ring: 'fourth' },
    })
    expect(shop.refusal(fit(9))).toMatchObject({
      code: 'piston-unknown',
      facts: { step: 'Rings on', cylinder: 9 },
    })
  })

  it('come off with a reason, which stays on the sheet, and go on again', () => {
    const shop = shopAt('rings-on')
    const off = { type: 'take-off-rings', step: 'rings-on', cylinder: 1 } as const
    expect(shop.refuses({ ...off, reason: 'a rail is bent' })).toContain('are not on')
    shop.does(fit(1))
    expect(shop.refusal({ ...off, reason: '' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'rings-taken-off', piston: 'Piston 1' } },
    })
    shop.does({ ...off, reason: 'a rail is bent' })
    shop.does(fit(1))
    const sheet = buildSheet(moor, shop.entries)
    expect(sheet.rings.map(({ piston, takenOff }) => [piston.name.text, takenOff])).toEqual([
      ['Piston 1', 'a rail is bent'],
      ['Piston 1', null],
    ])
    expect(sheet.corrections.at(-1)).toMatchObject({ kind: 'rings-taken-off', reason: 'a rail is bent' })
    expect(isByRules(shop)).toBe(true)
  })

  it('stay on while the pistons are on the rods over them', () => {
    const shop = shopAt('piston-way')
    expect(
      shop.refusal({ type: 'take-off-rings', step: 'rings-on', cylinder: 1, reason: 'to look' }),
    ).toMatchObject({ code: 'step-on-top', facts: { step: 'Rings on', top: 'Pistons', kind: 'fit-part' } })
  })
})
