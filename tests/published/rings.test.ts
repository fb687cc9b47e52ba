import { describe, expect, it } from 'vitest'
import { judgeLimits, ringGapAdvice } from '../../core/builds/index.ts'
import { endGapIn, type Ring } from '../../core/engine/index.ts'
import { inMillimetres, lengthIn, lengthOf } from '../../core/quantity/index.ts'
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
