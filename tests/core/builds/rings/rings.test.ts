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
    expect(shop.refuses({ type: 'accept-measured', ...top1, reason: 'it will wear' })).toContain(
      'Top ring, Barrel 1: a gap that is too narrow is never accepted',
    )
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
    expect(shop.refuses(measured('0'))).toContain('a ring gap of 0 is no reading')
    expect(shop.refuses(measured('0', true))).toContain('a ring gap of 0 is no reading')
    expect(shop.refuses(measured('-0.3'))).toMatch(/\.$/)
  })

  it('typed in the wrong unit is not filed by: it is asked about, and taken when it is meant so', () => {
    const shop = shopAt('ring-gaps')
    expect(shop.refuses(measured('0.4 in'))).toBe(
      'Top ring: 0.4 in is 10.160 mm, far from its limits, and 0.4 mm (0.400 mm) would be within them. Type it with the unit ' +
        'of your gauge; if it is as you typed it, say so.',
    )
    expect(shop.refuses(measured('0.016'))).toContain('0.016 in (0.406 mm) would be within them')
    expect(shop.refuses(measured('16'))).toContain('16 thou (0.406 mm)')
    expect(shop.refuses(measured('60 mm'))).toContain(
      'no ring in a bore of 90.0 mm gapes by more than 5.4 mm',
    )
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
    expect(shop.refuses(fit(2))).toContain('The rings of Piston 2 are on already')
    expect(isByRules(shop)).toBe(true)
  })

  it('are refused with gaps in line, over the pin, on a thrust side, past a turn, of a ring or piston that is not there', () => {
    const shop = shopAt('rings-on')
    const second = (typed: string) => fit(1, [{ ring: 'second', typed }])
    expect(shop.refuses(second('60'))).toBe(
      'Piston 1: the gaps of Top ring and Second ring stand 15° apart, and 60° at least is wanted. Turn one of the rings.',
    )
    expect(shop.refuses(second('190'))).toContain('stands 10° from the end of the pin')
    expect(shop.refuses(second('250'))).toContain('stands 20° from the middle of a thrust side')
    expect(shop.refuses(second('360'))).toContain('0° up to 360°')
    expect(shop.refuses(second('wide'))).toMatch(/\.$/)
    expect(shop.refuses(fit(1, [{ ring: 'fourth', typed: '20' }]))).toContain('Piston 1 has no ring “fourth”')
    expect(shop.refuses(fit(9))).toContain('has no piston for cylinder 9')
  })

  it('come off with a reason, which stays on the sheet, and go on again', () => {
    const shop = shopAt('rings-on')
    const off = { type: 'take-off-rings', step: 'rings-on', cylinder: 1 } as const
    expect(shop.refuses({ ...off, reason: 'a rail is bent' })).toContain('are not on')
    shop.does(fit(1))
    expect(shop.refuses({ ...off, reason: '' })).toContain('Say why the rings of Piston 1 come off')
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
      shop.refuses({ type: 'take-off-rings', step: 'rings-on', cylinder: 1, reason: 'to look' }),
    ).toContain('was done on top of “Rings on”')
  })
})
