import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  clearanceText,
  exactly,
  oilClearance,
  rangeSpan,
  wholeRange,
  type Range,
} from '../../../core/bearing/index.ts'
import { nanometres, type Length } from '../../../core/quantity/index.ts'
import { mm, um } from './fits.ts'
import { checkProperty } from '../../property.ts'
import { en } from '../../../core/words/index.ts'

function between(least: number, most: number): Range {
  return { least: mm(least), most: mm(most) }
}

describe('oil clearance', () => {
  it('is the bore less the journal and both walls', () => {
    // 56.012 − 52.000 − 1.993 − 1.989 = 0.030
    expect(
      oilClearance(exactly(mm(56.012)), exactly(mm(52)), exactly(mm(1.993)), exactly(mm(1.989))),
    ).toEqual({
      least: um(30),
      most: um(30),
      nominal: um(30),
      likely: { least: um(30), most: um(30) },
    })
  })

  it('is at worst between the small bore on the large journal and the large bore on the small one', () => {
    const wall = between(1.989, 1.992)
    const clearance = oilClearance(between(56.006, 56.012), between(51.994, 52), wall, wall)
    // 56.006 − 52.000 − 2 × 1.992 = 0.022; 56.012 − 51.994 − 2 × 1.989 = 0.040
    expect([clearance.least, clearance.nominal, clearance.most]).toEqual([um(22), um(31), um(40)])
  })

  it('likely lies within the root of the sum of squares: √(3² + 3² + 1.5² + 1.5²) = 4.743 µm', () => {
    const wall = between(1.989, 1.992)
    const { likely } = oilClearance(between(56.006, 56.012), between(51.994, 52), wall, wall)
    expect(likely).toEqual({ least: nanometres(31_000 - 4_743), most: nanometres(31_000 + 4_743) })
  })

  it('is below zero when the journal is larger than the room for it', () => {
    const clearance = oilClearance(exactly(mm(56)), exactly(mm(52.01)), exactly(mm(2)), exactly(mm(2)))
    expect(clearance.nominal).toBe(um(-10))
  })

  it('is written to the nanometre where it must be', () => {
    expect(en.amounts.span(rangeSpan({ least: um(24), most: um(48) }))).toBe('24 to 48 µm')
    expect(en.amounts.span(rangeSpan({ least: um(23.96), most: um(48.5) }))).toBe('23.96 to 48.5 µm')
    expect(en.amounts.span(rangeSpan({ least: um(-3), most: um(100) }))).toBe('−3 to 100 µm')
  })
})

const size = (from: number, to: number) => fc.integer({ min: from, max: to }).map(nanometres)
const range = (from: number, to: number) =>
  fc
    .tuple(size(from, to), fc.integer({ min: 0, max: 12_000 }))
    .map(([least, width]): Range => ({ least, most: nanometres(least + width) }))
const bores = range(56_000_000, 56_030_000)
const journals = range(51_950_000, 52_000_000)
const walls = range(1_970_000, 2_000_000)

/** A size in a range, by a share of its width. */
function at({ least, most }: Range, share: number): Length {
  return nanometres(least + Math.round((most - least) * share))
}

describe('the range of an oil clearance', () => {
  it('holds every engine that could be built from the bands', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true })
    checkProperty(
      fc.property(
        bores,
        journals,
        walls,
        walls,
        fc.tuple(share, share, share, share),
        (b, j, u, l, shares) => {
          const worst = oilClearance(b, j, u, l)
          const real = at(b, shares[0]) - at(j, shares[1]) - at(u, shares[2]) - at(l, shares[3])
          expect(real).toBeGreaterThanOrEqual(worst.least)
          expect(real).toBeLessThanOrEqual(worst.most)
          expect(worst.likely.least).toBeGreaterThanOrEqual(worst.least)
          expect(worst.likely.most).toBeLessThanOrEqual(worst.most)
        },
      ),
      { numRuns: 1000 },
    )
  })

  it('has about 9 of 10 engines in its likely part when sizes fill their bands evenly', () => {
    const wall = between(1.989, 1.992)
    const bore = between(56.006, 56.012)
    const journal = between(51.994, 52)
    const { likely } = oilClearance(bore, journal, wall, wall)
    // Every combination of 21 evenly spaced sizes of each part, which is what even filling means.
    const steps = Array.from({ length: 21 }, (_, step) => (step + 0.5) / 21)
    let inside = 0
    for (const b of steps)
      for (const j of steps)
        for (const u of steps)
          for (const l of steps) {
            const real = at(bore, b) - at(journal, j) - at(wall, u) - at(wall, l)
            if (real >= likely.least && real <= likely.most) inside++
          }
    expect(inside / 21 ** 4).toBeGreaterThan(0.88)
    expect(inside / 21 ** 4).toBeLessThan(0.95)
  })

  it('never grows with more wall', () => {
    checkProperty(
      fc.property(bores, journals, walls, walls, size(1, 20_000), (bore, journal, upper, lower, more) => {
        const thicker = { least: nanometres(upper.least + more), most: nanometres(upper.most + more) }
        const before = oilClearance(bore, journal, upper, lower)
        const after = oilClearance(bore, journal, thicker, lower)
        expect(after.least).toBe(before.least - more)
        expect(after.most).toBe(before.most - more)
        expect(after.nominal).toBeLessThan(before.nominal + 1)
      }),
    )
  })
})

describe('a clearance in words', () => {
  it('is in whole micrometres: what lies behind is no more certain', () => {
    // 56.0124 − 52.0006 − 2 · 1.9900 = 31.8 µm; with a bore of 56.0216 it is 41 µm.
    const clearance = oilClearance(
      between(56.0124, 56.0216),
      exactly(mm(52.0006)),
      exactly(mm(1.99)),
      exactly(mm(1.99)),
    )
    expect(clearanceText(en, clearance)).toBe('36 µm (32 to 41)')
    expect(wholeRange(en, clearance)).toBe('32 to 41 µm')
  })
})
