import { describe, expect, it } from 'vitest'
import { candidatesBetween, candidatesFor, clearanceWith, exactly } from '../../../../core/bearing/index.ts'
import type { Fit } from '../../../../core/engine/index.ts'
import { chartedMains, mm, pumpMains, um } from '../fits.ts'
import { lineOf } from '../../../problem-line.ts'

const names = (pairs: readonly { upper: string; lower: string }[]) =>
  pairs.map(({ upper, lower }) => `${upper}/${lower}`)

describe('what a person may pick at a saddle', () => {
  it('is every grade twice and every two neighbours, the thicker where the spec says', () => {
    expect(names(candidatesFor(pumpMains, 'M1', '2', 'A'))).toEqual([
      'P/P',
      'P/Q',
      'Q/Q',
      'Q/R',
      'R/R',
      'R/S',
      'S/S',
      'S/T',
      'T/T',
    ])
  })

  it('has neighbours both ways round where either half may take the thicker', () => {
    const fit: Fit = { ...pumpMains, mixing: { neighbours: true, thicker: 'either' } }
    expect(names(candidatesFor(fit, 'M1', '2', 'A')).slice(0, 4)).toEqual(['P/P', 'P/Q', 'Q/P', 'Q/Q'])
  })

  it('has the chart’s own pair too, even where the spec would not mix it', () => {
    const fit: Fit = {
      ...chartedMains,
      chart: [{ housing: '2', journal: 'A', upper: 'P', lower: 'R' }],
      mixing: { neighbours: false, thicker: 'lower' },
    }
    expect(names(candidatesFor(fit, 'M1', '2', 'A'))).toEqual(['P/P', 'Q/Q', 'R/R', 'S/S', 'T/T', 'P/R'])
    expect(names(candidatesFor(fit, 'M1', '3', 'A'))).toEqual(['P/P', 'Q/Q', 'R/R', 'S/S', 'T/T'])
  })

  it('has the chart’s own pair once where the spec mixes it anyway', () => {
    const fit: Fit = { ...chartedMains, chart: [{ housing: '2', journal: 'A', upper: 'P', lower: 'Q' }] }
    const listed = names(candidatesFor(fit, 'M1', '2', 'A'))
    expect(listed.filter((each) => each === 'P/Q')).toHaveLength(1)
    expect(listed).toHaveLength(9)
  })

  it('comes with the clearance, each step of 3 µm in one wall taking 3 µm off it', () => {
    const nominals = candidatesFor(pumpMains, 'M1', '2', 'A').map(({ judged }) => judged?.clearance.nominal)
    expect(nominals).toEqual([37, 34, 31, 28, 25, 22, 19, 16, 13].map(um))
  })

  it('comes without a clearance where a mark is worn', () => {
    const candidates = candidatesFor(pumpMains, 'M1', null, 'A')
    expect(names(candidates)).toHaveLength(9)
    expect(candidates.every(({ judged }) => judged === null)).toBe(true)
  })

  it('can be asked for between measured sizes', () => {
    const sizes = { bore: exactly(mm(56.009)), journal: exactly(mm(51.997)) }
    const [loosest] = candidatesBetween(pumpMains, 'M1', sizes)
    // 56.009 − 51.997 − 2 × 1.986…1.989 = 0.034…0.040
    expect([loosest?.judged?.clearance.least, loosest?.judged?.clearance.most]).toEqual([um(34), um(40)])
  })
})

describe('the clearance of an explicit pick', () => {
  const clearanceText = (
    housing: string | null,
    journal: string | null,
    upper: string,
    lower: string,
    fit = pumpMains,
  ) => {
    const judged = clearanceWith(fit, housing, journal, upper, lower)
    return judged.ok ? [judged.value.clearance.nominal, judged.value.within] : lineOf(judged.problem)
  }

  it('is reported for allowed pairs and for others', () => {
    expect(clearanceText('2', 'A', 'Q', 'Q')).toEqual([um(31), 'inside'])
    expect(clearanceText('2', 'A', 'P', 'T')).toEqual([um(25), 'may-be-tight'])
  })

  it('is refused where something is not known', () => {
    expect(clearanceText(null, 'A', 'Q', 'Q')).toMatch(/^mark-worn: place=Main bearings, part=the case/)
    expect(clearanceText('2', 'D', 'Q', 'Q')).toMatch(/^mark-unknown: .*part=the crank, mark=D/)
    expect(clearanceText('2', 'A', 'Q', 'Z')).toMatch(/^grade-unknown: .*grade=Z/)
    const unsized = { ...pumpMains, grades: [{ grade: 'Q', colour: '#E69F00', pattern: 'plain' as const }] }
    expect(clearanceText('2', 'A', 'Q', 'Q', unsized)).toMatch(/^wall\S*: .*grade=Q/)
  })
})
