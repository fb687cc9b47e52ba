import { describe, expect, it } from 'vitest'
import { disagreements, markOf, measure } from '../../../../core/bearing/index.ts'
import { celsius } from '../../../../core/quantity/index.ts'
import { band, mm, pumpMains, um } from '../fits.ts'
import { lineOf } from '../../../problem-line.ts'

const steel = { expansion: 11.5, temperature: celsius(20) }
const size = (...readings: number[]) => measure([readings.map(mm)], steel)

describe('the mark of a size', () => {
  it.each([
    [56.006, '1'],
    [56.0061, '2'],
    [56.012, '2'],
    [56.018, '3'],
    [56.0181, null],
    [55.9999, null],
  ])('%d mm is mark %s: over the lower edge, up to and including the upper', (bore, mark) => {
    expect(markOf(pumpMains.housing, mm(bore))).toBe(mark)
  })

  it('takes in the lower edge of the least band alone', () => {
    expect(markOf(pumpMains.housing, mm(56))).toBe('1')
    expect(markOf(pumpMains.journal, mm(51.982))).toBe('C')
    expect(markOf(pumpMains.journal, mm(51.988))).toBe('C')
  })

  it('is none in a gap between bands', () => {
    const marks = [
      { mark: '1', band: band(56, 56.006) },
      { mark: '2', band: band(56.008, 56.012) },
    ]
    expect(markOf({ name: 'the case', marks }, mm(56.008))).toBeNull()
    expect(markOf({ name: 'the case', marks }, mm(56.007))).toBeNull()
  })
})

describe('marks and readings', () => {
  const findingsOf = (bore: number[], journal: number[], uncertainty = 0) =>
    disagreements(
      pumpMains,
      'M2',
      { housing: '2', journal: 'A' },
      { bore: size(...bore), journal: size(...journal) },
      um(uncertainty),
    ).map(lineOf)

  it('agree when the mean lies in the band', () => {
    expect(findingsOf([56.004, 56.012], [51.996, 51.998])).toEqual([])
  })

  it('disagree when it does not, and the mark that it would have is named', () => {
    expect(findingsOf([56.0155], [51.99])).toEqual([
      'mark-against-size: place=M2, part=the case, mark=2, least=56.006 mm, most=56.012 mm, size=56.0155 mm, wouldBe=3',
      'mark-against-size: place=M2, part=the crank, mark=A, least=51.994 mm, most=52 mm, size=51.99 mm, wouldBe=B',
    ])
    expect(findingsOf([56.03], [51.997])[0]).not.toContain('wouldBe')
  })

  it('agree within what the readings are unsure of', () => {
    expect(findingsOf([56.014], [51.997], 2)).toEqual([])
    expect(findingsOf([56.014], [51.997], 1)).toHaveLength(1)
    expect(findingsOf([56.0045], [51.997], 2)).toEqual([])
  })

  it('agree on the lower edge of the least band, which has no band below', () => {
    const marks = { housing: '1', journal: 'C' }
    const readings = { bore: size(56), journal: size(51.982) }
    expect(disagreements(pumpMains, 'M2', marks, readings, um(0))).toEqual([])
  })

  it('disagree on the lower edge, which belongs to the band below', () => {
    expect(findingsOf([56.006], [51.997])[0]).toContain('wouldBe=1')
  })

  it('are not held against each other where the mark is worn', () => {
    const worn = { housing: null, journal: null }
    const readings = { bore: size(57), journal: size(50) }
    expect(disagreements(pumpMains, 'M2', worn, readings, um(0))).toEqual([])
  })
})
