import { describe, expect, it } from 'vitest'
import { drawingFacts } from '../../../../core/builds/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { nanometres } from '../../../../core/quantity/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'
import { en } from '../../../../core/words/index.ts'

const skerry = demoEngine('skerry-3')
const notes = (shop: Workshop, step: string) => drawingFacts(en, shop.spec, shop.state, shop.step(step)).notes
const procedure = 'case'

/** At the closing of the case, two fasteners seated. */
function atTheCase(spec: EngineSpec = skerry): Workshop {
  const shop = new Workshop(spec)
  shop.worksUpTo('case-run')
  for (let entry = 0; entry < 2 + 2; entry++) shop.goesOn()
  return shop
}

describe('the notes beside the drawing', () => {
  it('are none while nothing was found', () => {
    const shop = new Workshop(skerry)
    expect(notes(shop, 'case-marks')).toEqual([])
  })

  it('say a problem at its fastener in the person’s own words until it is answered', () => {
    const shop = atTheCase()
    shop.does({ type: 'note-problem', procedure, fastener: 'case-1', text: 'Thread feels rough' })
    const note = { about: 'fastener/case-1', kind: 'open', texts: ['Thread feels rough'] }
    expect(notes(shop, 'case-run')).toContainEqual(note)
    shop.does({ type: 'answer-flag', procedure, flag: 1, answer: 'Thread chased, runs free now' })
    expect(notes(shop, 'case-run')).not.toContainEqual(expect.objectContaining({ about: 'fastener/case-1' }))
  })

  it('say a problem of the whole build at the face', () => {
    const shop = atTheCase()
    shop.does({ type: 'note-problem', procedure, fastener: null, text: 'Joint face scratched' })
    expect(notes(shop, 'case-run')[0]).toEqual({
      about: 'face/joint',
      kind: 'open',
      texts: ['Joint face scratched'],
    })
  })

  it('gather all that is open at one fastener in one note', () => {
    const shop = atTheCase()
    shop.does({ type: 'note-problem', procedure, fastener: 'case-1', text: 'Washer cracked' })
    shop.does({ type: 'note-problem', procedure, fastener: 'case-1', text: 'Oil in the hole' })
    expect(notes(shop, 'case-run').filter(({ about }) => about === 'fastener/case-1')).toEqual([
      { about: 'fastener/case-1', kind: 'open', texts: ['Washer cracked', 'Oil in the hole'] },
    ])
  })

  it('say a reading outside its limits with the limits', () => {
    const shop = atTheCase()
    for (let entry = 0; entry < 6; entry++) shop.goesOn()
    const reading = { typed: '18', unit: 'N·m' } as const
    shop.does({
      type: 'pull',
      procedure,
      pass: 1,
      fastener: 'case-1',
      reading,
      moved: false,
      outOfOrder: null,
    })
    // The spec has 15 N·m ± 10 %.
    expect(notes(shop, 'case-run')[0]).toEqual({
      about: 'fastener/case-1',
      kind: 'open',
      texts: ['reads 18 N·m, 13.5 to 16.5'],
    })
  })

  it('stand on the face of their run only', () => {
    const shop = atTheCase()
    shop.does({ type: 'note-problem', procedure, fastener: 'case-1', text: 'Thread feels rough' })
    expect(notes(shop, 'sump-run')).toEqual([])
  })
})

describe('what was measured', () => {
  it('is noted where it was: the end float at the thrust washers', () => {
    const shop = new Workshop(skerry)
    shop.worksThrough('end-float')
    expect(notes(shop, 'end-float')).toEqual([
      { about: 'thrust/M3', kind: 'measured', texts: [expect.stringMatching(/^End float: 0\.\d\d mm$/)] },
    ])
  })

  it('is open where the answer was not good, with what was said', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('end-float')
    shop.does({ type: 'answer-check', step: 'end-float', good: false, reading: '0.55', note: 'Washer worn' })
    expect(notes(shop, 'end-float')).toEqual([
      { about: 'thrust/M3', kind: 'open', texts: ['End float: 0.55 mm, Washer worn'] },
    ])
  })

  it('says the gap of the joint face once all are seated, and its flag first while that is open', () => {
    const spec = withGap(skerry)
    const shop = new Workshop(spec)
    shop.worksUpTo('case-run')
    for (let entry = 0; entry < 2 + 8; entry++) shop.goesOn()
    const gap = (typed: string) =>
      shop.does({
        ...{ type: 'pull', procedure, pass: 0, fastener: null, moved: false, outOfOrder: null },
        reading: { typed, unit: 'mm' },
      })
    gap('0.08')
    const atFace = () => notes(shop, 'case-run').find(({ about }) => about === 'face/joint')
    expect(atFace()).toEqual({
      about: 'face/joint',
      kind: 'open',
      texts: ['measured 0.080 mm, at most 0.050 mm'],
    })
    shop.does({ type: 'answer-flag', procedure, flag: 1, answer: 'Burr at the dowel, filed off' })
    expect(atFace()).toEqual({
      about: 'face/joint',
      kind: 'measured',
      texts: ['gap 0.08 mm, at most 0.050 mm'],
    })
  })
})

/** The case is seated until its joint face shows 0.05 mm at most. */
function withGap(spec: EngineSpec): EngineSpec {
  const procedures = spec.procedures.map((each) => {
    const [seat, ...others] = each.passes
    return each.id !== procedure || seat?.kind !== 'seat'
      ? each
      : { ...each, passes: [{ ...seat, gap: { most: nanometres(50_000) } }, ...others] }
  })
  return { ...spec, procedures }
}

describe('a bearing on the drawing', () => {
  it('says how its clearance leaves the limits: R is 12 µm thinner in each half than V', () => {
    const shop = new Workshop(skerry)
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '3 3 3 3' })
    shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'HHHH' })
    const others = (['upper', 'lower'] as const).map((half) => ({
      ...{ position: 'M1', half, grade: 'R', reason: 'Nothing else there.' },
    }))
    shop.does({ type: 'choose-shells', step: 'choose-mains', others })
    const { bearings } = drawingFacts(en, skerry, shop.state, shop.step('fit-mains'))
    expect(bearings['M1']!.judged).toBe('may be too loose, 20 to 50 µm allowed')
    expect(bearings['M2']!.judged).toBeUndefined()
  })
})

describe('the half to be fitted next', () => {
  const facts = (shop: Workshop, step: string, picked: string | null = null) =>
    drawingFacts(en, shop.spec, shop.state, shop.step(step), 'N·m', picked)

  it('is the first upper one, with its grade, then the next upper ones, then the lower ones', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('fit-mains')
    expect(facts(shop, 'fit-mains').nextHalf).toBe('M1/upper')
    expect(facts(shop, 'fit-mains').callout).toBe('fit R')
    for (const position of ['M1', 'M2', 'M3', 'M4'])
      shop.does({ type: 'fit-half', step: 'fit-mains', position, half: 'upper' })
    expect(facts(shop, 'fit-mains').nextHalf).toBe('M1/lower')
  })

  it('is the one that was tapped, while it is not in place', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('fit-mains')
    expect(facts(shop, 'fit-mains', 'half/M3/lower')).toMatchObject({
      nextHalf: 'M3/lower',
      callout: 'fit V',
    })
    shop.does({ type: 'fit-half', step: 'fit-mains', position: 'M3', half: 'lower' })
    expect(facts(shop, 'fit-mains', 'half/M3/lower').nextHalf).toBe('M1/upper')
  })

  it('is none in other steps, before its step is open, and once all are in', () => {
    const shop = new Workshop(skerry)
    expect(facts(shop, 'fit-mains').nextHalf).toBeNull()
    shop.worksUpTo('fit-mains')
    expect(facts(shop, 'choose-mains').nextHalf).toBeNull()
    shop.worksThrough('fit-mains')
    expect(facts(shop, 'fit-mains').nextHalf).toBeNull()
  })

  it('is shown in big ends as well', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('fit-rod-shells')
    expect(facts(shop, 'fit-rod-shells').nextHalf).toBe('B1/upper')
  })
})
