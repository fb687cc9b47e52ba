import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readSpec } from '../../../core/engine/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { gapAdvice } from '../../../renderer/steps/check/gap-advice.ts'

/** Limits 0.10 to 0.28 mm; standard washers 2.80 mm for these, oversize 2.90 mm for 0.30 to 0.48; nothing between. */
const read = readSpec(readFileSync('specs/tarn-4.json', 'utf8'))
if (!read.ok) throw new Error('tarn-4 cannot be read')
const tarn = read.spec
const oversize = tarn.endFloat!.washers[1]!
const asks = (typed: string) => gapAdvice(tarn, 'end-float', typed, null)

describe('a measured end float', () => {
  it('gives the washers of the table', () => {
    expect(asks('0.20')).toEqual({ washers: tarn.endFloat!.washers[0], byThickness: null, faults: [] })
    expect(asks('0.40')!.washers).toEqual(oversize)
    expect(asks('0.40')!.faults.map(sentenceOf).join()).toContain('allowed 0.100 mm to 0.280 mm')
  })

  it('is not defined in a gap of the table', () => {
    expect(asks('0.29')!.washers).toBe('not-defined')
    expect(asks('0.29')!.faults.map(({ code }) => code)).toEqual(['gap-outside-limits', 'washer-not-defined'])
  })

  it('is put right by the washers that it was measured with: two oversize ones take up 0.20', () => {
    expect(gapAdvice(tarn, 'end-float', '0.15', [oversize, oversize])!.washers).toEqual(oversize)
  })

  it('is awaited while nothing that can be read is typed', () => {
    expect(asks('')).toBeNull()
    expect(asks('abc')).toBeNull()
  })
})

describe('washers by their thickness alone', () => {
  const { endFloat } = tarn
  const washers = endFloat!.washers.map(({ name, thickness }) => ({ name, thickness }))
  const [standard] = washers
  const plain = { ...tarn, endFloat: { ...endFloat!, washers } }
  const advice = (typed: string, fitted: typeof washers | null) =>
    gapAdvice(plain, 'end-float', typed, fitted)!

  it('follow from what it was measured with, which a person has to say', () => {
    expect(advice('0.40', null).byThickness).toBe('say-which')
    expect(advice('0.20', null).byThickness).toBeNull()
    // 0.40 mm with two of 2.80: less 0.20 with two of 2.90.
    expect(advice('0.40', [standard!, standard!]).byThickness).toMatchObject({
      pair: { first: { name: { key: '+0.10' } }, second: { name: { key: '+0.10' } }, float: 200_000 },
      toGet: [{ washer: { name: { key: '+0.10' } }, count: 2 }],
    })
  })

  it('follow from the gap without any, which has no limits of its own', () => {
    expect(advice('5.80', [])).toMatchObject({
      byThickness: { pair: { first: { name: { key: 'STD' } }, float: 200_000 } },
      faults: [],
    })
    expect(advice('6.50', []).byThickness).toBe('none-fits')
  })
})

describe('a measured side clearance', () => {
  it('is held against its limits, 0.15 to 0.35 mm', () => {
    expect(gapAdvice(tarn, 'rod-side', '0.25', null)).toEqual({
      washers: null,
      byThickness: null,
      faults: [],
    })
    expect(gapAdvice(tarn, 'rod-side', '0.40', null)!.faults.map(sentenceOf).join()).toContain(
      'The rods: side clearance 0.400 mm',
    )
  })
})
