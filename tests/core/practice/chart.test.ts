import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { EngineSpec, Fit } from '../../../core/engine/index.ts'
import { chartDrill, chartTally, drillsOf, judgeChart, printedChart } from '../../../core/practice/index.ts'
import { checkProperty } from '../../property.ts'
import { demo, demos } from '../layout/demos.ts'

const seeds = fc.integer({ min: 0, max: 10_000 }).map((round) => `round ${round}`)
const charted = demos.filter(({ fits }) => fits.some(({ chart }) => chart !== undefined))

/** The cells as the spec's file has them, found without the program's own look-up. */
function cellOf({ chart = [] }: Fit, position: string, housing: string, journal: string) {
  const here = chart.filter((cell) => cell.housing === housing && cell.journal === journal)
  return here.find((cell) => cell.positions?.includes(position)) ?? here.find((cell) => !cell.positions)
}

/** An engine with another chart: any grades for any marks, with gaps. */
const anyChart = fc.infiniteStream(fc.nat({ max: 1000 })).map((chance): EngineSpec => {
  const next = (below: number) => (chance.next().value ?? 0) % below
  const spec = demo('skerry-3')
  const fits = spec.fits.map((fit): Fit => {
    const cells = fit.housing.marks.flatMap(({ mark: housing }) =>
      fit.journal.marks.flatMap(({ mark: journal }) => {
        const { grade } = fit.grades[next(fit.grades.length)]!
        return next(4) === 0 ? [] : [{ housing, journal, upper: grade, lower: grade }]
      }),
    )
    return { ...fit, chart: cells }
  })
  return { ...spec, fits }
})

describe('a chart drill', () => {
  it('asks for what the spec’s own chart has for these marks', () => {
    let cells = 0
    checkProperty(
      fc.property(fc.oneof(fc.constantFrom(...charted), anyChart), seeds, (spec, seed) => {
        const drill = chartDrill(spec, seed)
        if (drill === null) return
        for (const { position, housing, journal, key } of drill.questions) {
          const cell = cellOf(drill.fit, position, housing, journal)
          expect(cell && [cell.upper, cell.lower].toSorted()).toEqual([key.upper, key.lower].toSorted())
          const printed = printedChart(drill.fit, position)
          const row = printed.rows.find((each) => each.housing === housing)
          expect(row?.cells[printed.columns.indexOf(journal)]).toEqual(key)
          cells += 1
        }
      }),
      { numRuns: 200, leastShare: 0.9 },
    )
    expect(cells).toBeGreaterThan(400)
  })

  it('says what the chosen shells would leave: bore less journal less both walls, at their ends', () => {
    let wrong = 0
    checkProperty(
      fc.property(fc.constantFrom(...charted), seeds, fc.nat(), fc.nat(), (spec, seed, up, down) => {
        const { fit, questions } = chartDrill(spec, seed)!
        const question = questions[0]!
        const grade = (at: number) => fit.grades[at % fit.grades.length]!
        const [upper, lower] = [grade(up), grade(down)]
        const verdict = judgeChart(fit, question, { upper: upper.grade, lower: lower.grade })
        const bore = fit.housing.marks.find(({ mark }) => mark === question.housing)!.band
        const journal = fit.journal.marks.find(({ mark }) => mark === question.journal)!.band
        if (!bore || !journal || !upper.wall || !lower.wall) return void expect(verdict.chosen).toBeNull()
        expect(verdict.chosen?.clearance).toMatchObject({
          least: bore.over - journal.upTo - upper.wall.upTo - lower.wall.upTo,
          most: bore.upTo - journal.over - upper.wall.over - lower.wall.over,
        })
        expect(verdict.wrong.includes('upper')).toBe(upper.grade !== question.key.upper)
        if (verdict.wrong.length > 0) wrong += 1
      }),
      { numRuns: 200, leastShare: 0.95 },
    )
    expect(wrong).toBeGreaterThan(50)
  })

  it('counts each half that was chosen wrongly, as often as it was', () => {
    const { fit, questions } = chartDrill(demo('skerry-3'), 'a')!
    const question = questions[0]!
    const other = fit.grades.find(({ grade }) => grade !== question.key.upper)!.grade
    const tries = [
      judgeChart(fit, question, { ...question.key, upper: other }),
      judgeChart(fit, question, question.key),
    ]
    expect(chartTally(question, tries)).toEqual([
      { about: `half/${question.position}/upper`, errors: 1 },
      { about: `half/${question.position}/lower`, errors: 0 },
    ])
  })

  it('is not offered by an engine without a chart', () => {
    const spec = demo('skerry-3')
    const bare = { ...spec, fits: spec.fits.map(({ chart: _, ...fit }) => fit) } as EngineSpec
    expect(chartDrill(bare, 'a')).toBeNull()
    expect(drillsOf(bare)).not.toContain('chart')
    expect(drillsOf(spec)).toContain('chart')
  })
})
