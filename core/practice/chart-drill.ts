import {
  chartPair,
  clearanceWith,
  hasChartAt,
  type Half,
  type JudgedClearance,
  type Pair,
} from '../bearing/index.ts'
import type { EngineSpec, Fit } from '../engine/index.ts'
import { Chance } from './chance.ts'
import type { Tally } from './round.ts'

/** One bearing with the marks that are read off its two parts, and the shells that the printed chart has for them. */
export interface ChartQuestion {
  readonly position: string
  readonly housing: string
  readonly journal: string
  readonly key: Pair
}

/** A crankcase with marks drawn by chance; of each bearing the shells are looked up in the printed chart. */
export interface ChartDrill {
  readonly fit: Fit
  /** At least one. */
  readonly questions: readonly ChartQuestion[]
}

/** The chart as a manual prints it for one bearing: a row for each housing mark, a column for each journal mark. */
export interface PrintedChart {
  readonly columns: readonly string[]
  readonly rows: readonly { readonly housing: string; readonly cells: readonly (Pair | null)[] }[]
}

const mostAsked = 5

/** Null where no chart of the engine has a cell whose grades it knows. */
export function chartDrill(spec: EngineSpec, seed: string): ChartDrill | null {
  const chance = new Chance(seed)
  const fits = spec.fits.filter((fit) =>
    fit.positions.some((position) => chartAnswers(fit, position).length > 0),
  )
  if (fits.length === 0) return null
  const fit = chance.one(fits)
  const positions = fit.positions.filter((position) => chartAnswers(fit, position).length > 0)
  const from = chance.below(Math.max(0, positions.length - mostAsked) + 1)
  const questions = positions
    .slice(from, from + mostAsked)
    .map((position) => ({ position, ...chance.one(chartAnswers(fit, position)) }))
  return { fit, questions }
}

/** All that the chart answers for one bearing. */
export function chartAnswers(fit: Fit, position: string): readonly Omit<ChartQuestion, 'position'>[] {
  if (!hasChartAt(fit, position)) return []
  const known = new Set(fit.grades.map(({ grade }) => grade))
  return fit.housing.marks.flatMap(({ mark: housing }) =>
    fit.journal.marks.flatMap(({ mark: journal }) => {
      const key = chartPair(fit, position, { housing, journal })
      return key !== null && known.has(key.upper) && known.has(key.lower) ? [{ housing, journal, key }] : []
    }),
  )
}

export function printedChart(fit: Fit, position: string): PrintedChart {
  const columns = fit.journal.marks.map(({ mark }) => mark)
  const rows = fit.housing.marks.map(({ mark: housing }) => ({
    housing,
    cells: columns.map((journal) => chartPair(fit, position, { housing, journal })),
  }))
  return { columns, rows }
}

/** What the chosen shells would come to; the clearances are null where the spec gives no sizes. */
export interface ChartVerdict {
  readonly wrong: readonly Half[]
  readonly chosen: JudgedClearance | null
  readonly key: JudgedClearance | null
}

export function judgeChart(fit: Fit, { housing, journal, key }: ChartQuestion, chosen: Pair): ChartVerdict {
  const clearance = ({ upper, lower }: Pair) => {
    const judged = clearanceWith(fit, housing, journal, upper, lower)
    return judged.ok ? judged.value : null
  }
  const halves: readonly Half[] = ['upper', 'lower']
  return {
    wrong: halves.filter((half) => chosen[half] !== key[half]),
    chosen: clearance(chosen),
    key: clearance(key),
  }
}

/** The halves of a question, each with how often it was chosen wrongly. */
export function chartTally({ position }: ChartQuestion, tries: readonly ChartVerdict[]): Tally {
  return (['upper', 'lower'] as const).map((half) => ({
    about: `half/${position}/${half}`,
    errors: tries.filter(({ wrong }) => wrong.includes(half)).length,
  }))
}
