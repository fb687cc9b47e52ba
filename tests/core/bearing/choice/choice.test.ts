import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { proposeShells, whyIn, type Marks, type Proposal } from '../../../../core/bearing/index.ts'
import type { ChartCell, Fit } from '../../../../core/engine/index.ts'
import { chartedMains, pumpMains, um } from '../fits.ts'
import { checkProperty } from '../../../property.ts'
import { en } from '../../../../core/words/index.ts'
import { lineOf } from '../../../problem-line.ts'

/** `Q/R` for Q above and R below; the sentence where there is none. */
function shells({ upper, lower, problem }: Proposal): string {
  if (upper !== null && lower !== null) return `${upper.grade}/${lower.grade}`
  return problem === null ? 'nothing' : lineOf(problem)
}

function proposed(fit: Fit, housing: Marks, journal: Marks): readonly string[] {
  return proposeShells(fit, housing, journal).map(shells)
}

function oneSaddle(fit: Fit): Fit {
  return { ...fit, positions: ['M1'] }
}

describe('shells by the chart', () => {
  it('are those of the cell of both marks, saddle by saddle', () => {
    const proposals = proposeShells(chartedMains, ['2', '1', '3', '2'], ['A', 'C', 'A', 'B'])
    expect(proposals.map(shells)).toEqual(['Q/Q', 'R/R', 'R/R', 'R/R'])
    expect(proposals[0]?.upper).toEqual({
      grade: 'Q',
      by: 'chart',
      reason: [{ code: 'by-chart', facts: { housing: '2', journal: 'A' } }],
    })
  })

  it('come with the clearance that the bands give', () => {
    // Bore 56.006–56.012, journal 51.994–52.000, two walls of 1.989–1.992: 22 to 40 µm, 31 in the middle.
    const [first] = proposeShells(oneSaddle(chartedMains), ['2'], ['A'])
    expect([first?.clearance?.least, first?.clearance?.nominal, first?.clearance?.most]).toEqual([
      um(22),
      um(31),
      um(40),
    ])
    expect(first?.within).toBe('inside')
    expect(first?.problem).toBeNull()
  })

  it('come without a clearance when the spec gives no sizes', () => {
    const bare = { ...chartedMains, grades: chartedMains.grades.map(({ wall: _, ...grade }) => grade) }
    const [first] = proposeShells(oneSaddle(bare), ['2'], ['A'])
    expect([first?.upper?.grade, first?.clearance, first?.within, first?.problem]).toEqual([
      'Q',
      null,
      null,
      null,
    ])
  })

  it('are proposed with a warning when the clearance could leave the limits', () => {
    const wrong = [{ housing: '2', journal: 'A', upper: 'S', lower: 'S' }]
    const [first] = proposeShells(oneSaddle({ ...chartedMains, chart: wrong }), ['2'], ['A'])
    expect(first?.upper?.grade).toBe('S')
    expect(first?.within).toBe('may-be-tight')
    expect(first!.problem!).toMatchObject({
      code: 'clearance-leaves-limits',
      facts: {
        place: 'M1',
        clearance: {
          from: { amount: 10, decimals: 3, isShort: true, unit: '' },
          upTo: { amount: 28, decimals: 3, isShort: true, unit: 'µm' },
        },
        limits: {
          from: { amount: 20, decimals: 3, isShort: true, unit: '' },
          upTo: { amount: 44, decimals: 3, isShort: true, unit: 'µm' },
        },
      },
    })
  })

  it('may differ for some saddles', () => {
    const chart: readonly ChartCell[] = [
      { housing: '2', journal: 'A', upper: 'Q', lower: 'Q' },
      { housing: '2', journal: 'A', upper: 'R', lower: 'R', positions: ['M3'] },
    ]
    const fit = { ...chartedMains, chart: [...chart] }
    expect(proposed(fit, ['2', '2', '2', '2'], ['A', 'A', 'A', 'A'])).toEqual(['Q/Q', 'Q/Q', 'R/R', 'Q/Q'])
  })

  it('give way to the bands at saddles of which the chart says nothing', () => {
    const chart = [{ housing: '2', journal: 'A', upper: 'P', lower: 'P', positions: ['M3'] }]
    const proposals = proposeShells({ ...chartedMains, chart }, ['2', '2', '2', '2'], ['A', 'A', 'A', 'A'])
    expect(proposals.map(({ upper }) => upper?.by)).toEqual(['bands', 'bands', 'chart', 'bands'])
  })

  it('are not guessed where the chart has no cell for the marks', () => {
    const chart = [{ housing: '2', journal: 'A', upper: 'Q', lower: 'Q' }]
    expect(proposed(oneSaddle({ ...chartedMains, chart }), ['3'], ['A'])).toEqual([
      'chart-cell-missing: place=M1, housing=3, journal=A',
    ])
  })

  it.each([
    ['lower', 'Q/R'],
    ['upper', 'R/Q'],
  ] as const)('put the thicker of two grades in the %s half when the spec says so', (thicker, pair) => {
    for (const cell of [
      { housing: '2', journal: 'A', upper: 'Q', lower: 'R' },
      { housing: '2', journal: 'A', upper: 'R', lower: 'Q' },
    ]) {
      const fit: Fit = { ...chartedMains, chart: [cell], mixing: { neighbours: true, thicker } }
      expect(proposed(oneSaddle(fit), ['2'], ['A'])).toEqual([pair])
    }
  })

  it('stay as the cell has them when either half may take the thicker', () => {
    const chart = [{ housing: '2', journal: 'A', upper: 'R', lower: 'Q' }]
    const fit: Fit = { ...chartedMains, chart, mixing: { neighbours: true, thicker: 'either' } }
    const [first] = proposeShells(oneSaddle(fit), ['2'], ['A'])
    expect(shells(first!)).toBe('R/Q')
    expect(whyIn(en, first!.lower!.reason)).toMatch(/\. The halves differ: upper R, lower Q\.$/)
  })

  it('are refused when the cell names a grade that the spec does not have', () => {
    const chart = [{ housing: '2', journal: 'A', upper: 'Z', lower: 'Q' }]
    expect(proposed(oneSaddle({ ...chartedMains, chart }), ['2'], ['A'])).toEqual([
      'grade-unknown: place=M1, grade=Z, known=P Q R S T',
    ])
  })
})

describe('shells by the bands', () => {
  it('are the pair nearest to the target of 32 µm that stays inside 20 to 44 µm', () => {
    // Q/Q gives 22 to 40 µm, 31 in the middle; P/Q 25 to 43, 34 in the middle; Q/R 19 to 37 could fall below.
    const [first] = proposeShells(oneSaddle(pumpMains), ['2'], ['A'])
    expect(shells(first!)).toBe('Q/Q')
    expect(first?.upper).toEqual({
      grade: 'Q',
      by: 'bands',
      reason: [{ code: 'by-bands', facts: { of: 2, housing: '2', journal: 'A' } }],
    })
    expect(whyIn(en, first!.upper!.reason)).toBe(
      'Nearest to the target of the 2 allowed pairs that stay inside the limits with housing mark 2 and journal mark A.',
    )
  })

  it('are mixed where that comes nearer', () => {
    const fit = { ...pumpMains, clearance: { ...pumpMains.clearance, target: um(34) } }
    expect(proposed(oneSaddle(fit), ['2'], ['A'])).toEqual(['P/Q'])
  })

  it('are never mixed where the spec forbids it', () => {
    const fit: Fit = {
      ...pumpMains,
      clearance: { ...pumpMains.clearance, target: um(34) },
      mixing: { neighbours: false, thicker: 'lower' },
    }
    expect(proposed(oneSaddle(fit), ['2'], ['A'])).toEqual(['Q/Q'])
  })

  it('have the thicker half under load where either may take it: below in a main, above in a rod', () => {
    const either: Fit = {
      ...pumpMains,
      clearance: { ...pumpMains.clearance, target: um(34) },
      mixing: { neighbours: true, thicker: 'either' },
    }
    expect(proposed(oneSaddle(either), ['2'], ['A'])).toEqual(['P/Q'])
    expect(proposed(oneSaddle({ ...either, kind: 'big-end' }), ['2'], ['A'])).toEqual(['Q/P'])
  })

  it('of two pairs equally near, are those of one grade, then the looser', () => {
    const aimed = (target: number, fit: Fit = pumpMains) =>
      proposed(oneSaddle({ ...fit, clearance: { ...fit.clearance, target: um(target) } }), ['2'], ['A'])
    // Middles: P/Q 34 µm, Q/Q 31 µm; 32.5 lies halfway.
    expect(aimed(32.5)).toEqual(['Q/Q'])
    // With limits wide enough for all: P/P 37 and Q/Q 31 µm, 34 halfway, and no mixing.
    const wide: Fit = {
      ...pumpMains,
      clearance: { least: um(10), most: um(60) },
      mixing: { neighbours: false, thicker: 'lower' },
    }
    expect(aimed(34, wide)).toEqual(['P/P'])
  })

  it('are none where no pair is sure to stay inside the limits', () => {
    const narrow = { ...pumpMains, clearance: { least: um(24), most: um(36) } }
    expect(proposed(oneSaddle(narrow), ['2'], ['A'])).toEqual([
      'no-pair-inside-limits: place=M1, split=upper-lower, upper=Q, lower=Q, from=22, upTo=40 µm, from=24, upTo=36 µm',
    ])
  })

  it('are none where the mark or the grades have no sizes', () => {
    const marks = pumpMains.housing.marks.map(({ mark }) => ({ mark }))
    const unsized = { ...pumpMains, housing: { ...pumpMains.housing, marks } }
    expect(proposed(oneSaddle(unsized), ['2'], ['A'])).toEqual([
      'mark-without-band: place=M1, part=the case, mark=2',
    ])
    const wallless = { ...pumpMains, grades: pumpMains.grades.map(({ wall: _, ...grade }) => grade) }
    expect(proposed(oneSaddle(wallless), ['2'], ['A'])).toEqual(['no-walls-known: place=M1'])
  })
})

describe('a mark that is worn or wrong', () => {
  it('leaves its saddle open, says what to do, and leaves the others alone', () => {
    expect(proposed(chartedMains, ['2', null, '3', '2'], ['A', 'C', null, 'B'])).toEqual([
      'Q/Q',
      'mark-worn: place=M2, part=the case',
      'mark-worn: place=M3, part=the crank',
      'R/R',
    ])
  })

  it('is not taken for a known one', () => {
    expect(proposed(oneSaddle(chartedMains), ['9'], ['A'])).toEqual([
      'mark-unknown: position=M1, part=the case, mark=9, known=1 2 3',
    ])
  })
})

describe('two saddles', () => {
  const mark = (...marks: string[]) => fc.constantFrom(...marks, null)
  const four = <T>(one: fc.Arbitrary<T>) => fc.array(one, { minLength: 4, maxLength: 4 })

  it('get each other’s shells when their marks are swapped', () => {
    checkProperty(
      fc.property(
        fc.constantFrom(pumpMains, chartedMains),
        four(mark('1', '2', '3')),
        four(mark('A', 'B', 'C')),
        (fit, housing, journal) => {
          const swap = <T>([a, b, c, d]: readonly T[]) => [b!, a!, c!, d!]
          const grades = (proposals: readonly Proposal[]) =>
            proposals.map(({ upper, lower, clearance }) => [upper?.grade, lower?.grade, clearance])
          expect(grades(proposeShells(fit, swap(housing), swap(journal)))).toEqual(
            swap(grades(proposeShells(fit, housing, journal))),
          )
        },
      ),
    )
  })
})
