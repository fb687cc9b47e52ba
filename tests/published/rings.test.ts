import { describe, expect, it } from 'vitest'
import { judgeLimits, ringGapAdvice } from '../../core/builds/index.ts'
import { endGapIn, type Measure, type Ring } from '../../core/engine/index.ts'
import { inMillimetres, lengthIn, lengthOf } from '../../core/quantity/index.ts'
import { en } from '../../core/words/index.ts'
import { demoDraft, specOf } from '../core/engine/demo.ts'

/** The rings of a demo with the values of a manual for its top ring. */
function topRing(change: Partial<ReturnType<typeof draftRing>>): Ring {
  const draft = demoDraft('moor-flat-4')
  const set = draft.ringSets![0]!
  Object.assign(set.rings[0]!, change)
  return specOf(draft).ringSets[0]!.rings[0]!
}
const draftRing = () => demoDraft('moor-flat-4').ringSets![0]!.rings[0]!
const inches = (value: number) => lengthOf(value, 'in')

describe('end gaps and groove clearances of public manuals', () => {
  /** TM 5-1940-277-34, p. 3-25: end gap 0.016 to 0.031 in, clearance in the groove 0.0025 to 0.0040 in. */
  const boat = topRing({
    endGap: { new: { least: '0.016 in', most: '0.031 in' } },
    grooveClearance: { new: { least: '0.0025 in', most: '0.0040 in' } },
  })
  /** TM 5-3825-229-14&P, p. 6-24: end gap 0.014 to 0.024 in. */
  const sweeper = topRing({ endGap: { new: { least: '0.014 in', most: '0.024 in' } } })

  const judged = (ring: Ring, value: number) =>
    judgeLimits(
      { ...endGapIn(ring, lengthOf(90, 'mm'))!, id: 'top', name: 'Top', what: 'ring-gap', at: [], where: '' },
      inches(value),
    )

  it.each([
    ['0.016', 'new'],
    ['0.031', 'new'],
    ['0.0155', 'outside'],
    ['0.0315', 'outside'],
  ])('TM 5-1940-277-34: %s in is %s', (value, verdict) => {
    expect(judged(boat, Number(value))).toBe(verdict)
  })

  it.each([
    ['0.014', 'new'],
    ['0.024', 'new'],
    ['0.013', 'outside'],
    ['0.025', 'outside'],
  ])('TM 5-3825-229-14&P: %s in is %s', (value, verdict) => {
    expect(judged(sweeper, Number(value))).toBe(verdict)
  })

  it('TM 5-1940-277-34: the clearance in the groove is kept to the ten-thousandth of an inch', () => {
    const { least, most } = boat.grooveClearance!.new
    expect([lengthIn(least!, 'in'), lengthIn(most!, 'in')]).toEqual([0.0025, 0.004])
  })
})

/** TM 55-1905-219-14-4, table of specifications: new, and the limit to which they may wear, in inches. */
describe('ring gaps and grooves with their wear limits, TM 55-1905-219-14-4', () => {
  const least = (value: string, most: string, limit: string) => ({
    new: { least: `${value} in`, most: `${most} in` },
    service: { most: `${limit} in` },
  })
  const fire = topRing({
    endGap: least('0.0230', '0.0380', '0.0600'),
    grooveClearance: least('0.0040', '0.0070', '0.0180'),
  })
  const judgedIn = (limits: Pick<Measure, 'new' | 'service'>, value: number) =>
    judgeLimits({ ...limits, id: 'top', name: 'Top', what: 'ring-gap', at: [], where: '' }, inches(value))

  it.each([
    [0.022, 'outside'],
    [0.023, 'new'],
    [0.038, 'new'],
    [0.039, 'service'],
    [0.06, 'service'],
    [0.061, 'outside'],
  ])('a gap of the fire ring of %d in is %s', (value, verdict) => {
    expect(judgedIn(endGapIn(fire, lengthOf(4.25, 'in'))!, value)).toBe(verdict)
  })

  it.each([
    [0.0039, 'outside'],
    [0.007, 'new'],
    [0.018, 'service'],
    [0.0181, 'outside'],
  ])('a clearance in its groove of %d in is %s', (value, verdict) => {
    expect(judgedIn(fire.grooveClearance!, value)).toBe(verdict)
  })
})

describe('a ring gap outside its limits', () => {
  // TM 9-2815-205-24, p. 0095-11, step 16: 0.0200 to 0.0300 in; 'file ends of compression ring if ring gap is too small'.
  it('that is too small is filed, by what is lacking', () => {
    const limits = { new: { least: inches(0.02), most: inches(0.03) } }
    const advice = ringGapAdvice(limits, inches(0.016))
    if (advice?.what !== 'file') throw new Error('another advice')
    expect([lengthIn(advice.least, 'in'), lengthIn(advice.most!, 'in')]).toEqual([0.004, 0.014])
  })

  // TM 9-2320-289-34, p. 3-42: 0.0118 to 0.0226 in, 'if any measurement is not correct, replace piston rings as a set'.
  it('that is too wide is replaced', () => {
    const limits = { new: { least: inches(0.0118), most: inches(0.0226) } }
    expect(ringGapAdvice(limits, inches(0.0227))?.what).toBe('replace')
    expect(ringGapAdvice(limits, inches(0.0226))).toBeNull()
  })

  // Engine Builder, June 2012, 'Tips for measuring ring end gaps': each 0.001 in of bore opens the gap by 0.003 in.
  it('by 0.003 in is that of a bore 0.001 in wider, as far as thousandths go', () => {
    const most = inches(0.039)
    const advice = ringGapAdvice({ new: { least: inches(0.027), most } }, inches(0.042))
    if (advice?.what !== 'replace') throw new Error('another advice')
    expect(lengthIn(advice.boreWiderBy, 'in').toFixed(3)).toBe('0.001')
  })
})

// The Shop, January 2019, p. 63: 4.030 × 0.0045 = 0.018 in for the top ring, 4.030 × 0.0050 = 0.020 in for the second.
describe('a gap for each inch of bore, a worked example', () => {
  it.each([
    [0.0045, '0.018'],
    [0.005, '0.020'],
  ])('%d of a bore of 4.030 in is %s in', (perBore, least) => {
    const ring = topRing({ endGap: { perBore, mostPerBore: 0.006 } })
    expect(lengthIn(endGapIn(ring, inches(4.03))!.new.least!, 'in').toFixed(3)).toBe(least)
  })
})

describe('names of rings, ISO 6621-1 and 6621-5', () => {
  /**
   * The contents of ISO/DIS 6621-1:2025 have scraper rings (6.6) and oil control rings (6.7); a summary of the edition of 2018 has
   * compression rings (3.1.4) and oil rings (3.1.5); the scope of ISO 6621-5:2020 has steel segments (rails) and expanders. The
   * equivalent terms in German and Spanish (annex A of part 1) and the text of ISO 6625 could not be read: those names are remembered.
   */
  it.each([
    ['compression', 'compression ring'],
    ['scraper', 'scraper ring'],
    ['oil', 'oil ring'],
    ['rail', 'rail'],
    ['expander', 'expander'],
  ] as const)('%s: %s', (kind, name) => {
    expect(en.editor.drawn.rings.kinds[kind]).toBe(name)
  })
})

describe('rules of thumb (remembered, without a source)', () => {
  it('0.004 in of gap for each inch of bore: a bore of 3.500 in takes 0.014 in', () => {
    const ring = topRing({ endGap: { perBore: 0.004, mostPerBore: 0.006 } })
    expect(lengthIn(endGapIn(ring, inches(3.5))!.new.least!, 'in')).toBeCloseTo(0.014, 6)
  })

  it('0.03 mm of wear in the bore opens the gap by about 0.09 mm', () => {
    const most = lengthOf(0.45, 'mm')
    const advice = ringGapAdvice({ new: { least: lengthOf(0.3, 'mm'), most } }, lengthOf(0.54, 'mm'))
    if (advice?.what !== 'replace') throw new Error('another advice')
    expect(inMillimetres(advice.by)).toBeCloseTo(0.09, 6)
    expect(inMillimetres(advice.boreWiderBy).toFixed(2)).toBe('0.03')
  })
})
