import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  whyIn,
  measure,
  measuredClearance,
  proposeBySizes,
  rangeOf,
  readSize,
  sizesFrom,
  type MeasuredBearing,
} from '../../../../core/bearing/index.ts'
import { amountsIn, celsius, nanometres, type Length } from '../../../../core/quantity/index.ts'
import { band, mm, pumpMains, um } from '../fits.ts'
import { checkProperty } from '../../../property.ts'
import { en } from '../../../../core/words/index.ts'
import { lineOf } from '../../../problem-line.ts'

const shown = amountsIn(en)

const steel = { expansion: 11.5, temperature: celsius(20) }

function measured(bore: readonly number[], journal: readonly number[]): MeasuredBearing {
  return { bore: measure([bore.map(mm)], steel), journal: measure([journal.map(mm)], steel) }
}

function sizesOf(measured: MeasuredBearing) {
  return sizesFrom(pumpMains, 'M2', { marks: { housing: null, journal: null }, measured })
}

function proposeByReadings(bearing: MeasuredBearing, uncertainty: Length) {
  const sizes = sizesOf(bearing)
  if (!sizes.ok) throw new Error(lineOf(sizes.problem))
  return proposeBySizes(pumpMains, 'M2', sizes.value, uncertainty)
}

function proposed(bearing: MeasuredBearing, uncertainty = um(0), fit = pumpMains) {
  const sizes = sizesOf(bearing)
  if (!sizes.ok) return lineOf(sizes.problem)
  const { upper, lower, problem } = proposeBySizes(fit, 'M2', sizes.value, uncertainty)
  if (upper !== null && lower !== null) return `${upper.grade}/${lower.grade}`
  return problem === null ? 'nothing' : lineOf(problem)
}

describe('the clearance from readings', () => {
  const bearing = measured([56.008, 56.011], [51.996, 51.998])

  it('counts from the smallest bore and the largest journal, with the mean and the greatest beside it', () => {
    const wall = rangeOf(band(1.989, 1.992))
    const { counts, mean, greatest } = measuredClearance(bearing, wall, wall)
    // 56.008 − 51.998 − 2 × 1.9905 = 29 µm; means 56.0095 − 51.997: 31.5 µm; 56.011 − 51.996: 34 µm
    expect([counts.nominal, mean.nominal, greatest.nominal]).toEqual([um(29), um(31.5), um(34)])
    // Only the walls are a range: 2 × 1.5 µm to either side.
    expect([counts.least, counts.most]).toEqual([um(26), um(32)])
  })

  it('is exact where the walls were measured', () => {
    const wall = { least: mm(1.99), most: mm(1.99) }
    const { counts } = measuredClearance(bearing, wall, wall)
    expect([counts.least, counts.most]).toEqual([um(30), um(30)])
  })

  it('needs a bore larger than the journal', () => {
    expect(sizesOf(measured([52], [52])).ok).toBe(false)
    const sizes = sizesOf(measured([51.99], [52]))
    expect(sizes.ok ? '' : lineOf(sizes.problem)).toBe(
      'bore-not-above-journal: place=M2, bore=51.99 mm, journal=52 mm',
    )
  })
})

describe('shells by readings', () => {
  it('are nearest to the target of 32 µm with what counts', () => {
    // 56.008 − 51.998 = 4.010; Q/Q takes 3.981 (29 µm), P/Q 3.978 (32 µm).
    const bearing = measured([56.008, 56.011], [51.996, 51.998])
    const proposal = proposeByReadings(bearing, um(0))
    expect([proposal.upper?.grade, proposal.lower?.grade]).toEqual(['P', 'Q'])
    expect(proposal.upper?.by).toBe('readings')
    expect(whyIn(en, proposal.upper!.reason)).toMatch(
      /the smallest bore and the largest journal that were measured/,
    )
    expect(proposal.clearance?.nominal).toBe(um(32))
  })

  it('stay clear of the limits by what the readings are unsure of', () => {
    // P/P leaves 35 µm ± 3 from the walls, at most 38; limits 20 to 38 just allow it, ± 1 µm of gauge do not.
    const fit = { ...pumpMains, clearance: { least: um(20), most: um(38), target: um(38) } }
    const bearing = measured([56.008], [51.998])
    expect(proposed(bearing, um(0), fit)).toBe('P/P')
    expect(proposed(bearing, um(1), fit)).toBe('P/Q')
  })

  it('are none where the gauge is too coarse for the limits', () => {
    expect(proposed(measured([56.008], [51.998]), um(13))).toBe(
      'gauge-too-coarse: from=20, upTo=44 µm, uncertainty=13 µm',
    )
  })

  it('are none where no pair does, or the sizes cannot be', () => {
    expect(proposed(measured([56.1], [51.998]))).toMatch(/^no-pair-inside-limits: place=M2, /)
    expect(proposed(measured([51.9], [51.998]))).toMatch(/^bore-not-above-journal: place=M2, bore=51.9 mm/)
  })

  it('are the same whether the gauge reads inches or millimetres', () => {
    // Sizes on the tenth of a thou, which is 2.54 µm: an inch micrometer shows them exactly, in mm they have 5 decimals.
    const tenths = (least: number, most: number) =>
      fc.integer({ min: Math.ceil(least / 0.00254), max: Math.floor(most / 0.00254) })
    const expected = { place: 'M2', what: 'bore', between: { least: mm(50), most: mm(58) } } as const
    const read = (typed: string, unit: 'mm' | 'in'): Length => {
      const size = readSize(typed, unit, expected)
      if (!size.ok) throw new Error(lineOf(size.problem))
      return size.value
    }
    checkProperty(
      fc.property(tenths(56, 56.02), tenths(51.97, 52.01), (bore, journal) => {
        const [inches, metric] = (['in', 'mm'] as const).map((unit) => {
          const typed = (size: number) =>
            shown.length(nanometres(size * 2540), unit, unit === 'in' ? 4 : 5).split(' ')[0]!
          return {
            bore: measure([[read(typed(bore), unit)]], steel),
            journal: measure([[read(typed(journal), unit)]], steel),
          }
        })
        expect(proposeByReadings(inches!, um(1))).toEqual(proposeByReadings(metric!, um(1)))
      }),
    )
  })

  it('never have less wall where the bore is larger, and never leave the limits', () => {
    const bore = fc.integer({ min: 56_000, max: 56_020 })
    checkProperty(
      fc.property(bore, bore, (a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)].map((bore) =>
          proposeByReadings(measured([bore / 1000], [51.99]), um(0)),
        )
        const wall = (grade = '') => 'PQRST'.indexOf(grade)
        if (small!.upper === null || large!.upper === null) return
        expect(wall(large!.upper.grade) + wall(large!.lower?.grade)).toBeGreaterThanOrEqual(
          wall(small!.upper.grade) + wall(small!.lower?.grade),
        )
        expect([small!.within, large!.within]).toEqual(['inside', 'inside'])
      }),
    )
  })
})
