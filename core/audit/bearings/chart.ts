import { halfName, type ChartCell, type EngineSpec, type Fit, type MarkedPart } from '../../engine/index.ts'
import type { Facts } from '../../problem/index.ts'
import { isCharted } from './clearance.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/** Charts: known marks and grades, one cell for each two marks at each position, mixtures by the rule. */
export function auditChart({ fits }: EngineSpec): readonly Finding[] {
  return fits.flatMap((fit, index) => {
    if (fit.chart === undefined) return []
    const path = `fits[${index}].chart`
    return [
      ...fit.chart.flatMap((cell, k) => auditCell(fit, cell, `${path}[${k}]`)),
      ...twice(fit, fit.chart, path),
      ...absent(fit, fit.chart, path),
    ]
  })
}

function auditCell(fit: Fit, cell: ChartCell, path: string): readonly Finding[] {
  const marks = { fit: fit.name, housing: cell.housing, journal: cell.journal }
  const known = fit.grades.map(({ grade }) => grade)
  const unknown = (['upper', 'lower'] as const).filter((half) => !known.includes(cell[half]))
  const rule = unknown.length === 0 ? brokenRule(fit, cell) : null
  return [
    ...auditMark(fit, fit.housing, cell.housing, `${path}.housing`),
    ...auditMark(fit, fit.journal, cell.journal, `${path}.journal`),
    ...unknown.map((half) =>
      fault('chart-grade-unknown', { ...marks, grade: cell[half], known }, `${path}.${half}`),
    ),
    ...(rule === null
      ? []
      : [
          fault(
            'chart-mixes-against-rule',
            { ...marks, split: fit.split, upper: cell.upper, lower: cell.lower, rule },
            path,
          ),
        ]),
  ]
}

function auditMark(fit: Fit, part: MarkedPart, mark: string, path: string): readonly Finding[] {
  const known = part.marks.map((each) => each.mark)
  if (known.includes(mark)) return []
  return [fault('chart-mark-unknown', { fit: fit.name, part: part.name, mark, known }, path)]
}

type Rule = Facts<'chart-mixes-against-rule'>['rule']

/** The part of the mixing rule that a cell breaks; null when it keeps it. */
function brokenRule(fit: Fit, { upper, lower }: ChartCell): Rule | null {
  const { grades, mixing } = fit
  const place = (grade: string): number => grades.findIndex((each) => each.grade === grade)
  const step = place(upper) - place(lower)
  if (step === 0) return null
  if (!mixing.neighbours) return 'one-grade'
  if (Math.abs(step) > 1) return 'neighbours'
  const thicker = step > 0 ? 'upper' : 'lower'
  if (mixing.thicker === 'either' || mixing.thicker === thicker) return null
  return `thicker-${halfName(fit, mixing.thicker)}`
}

/** Two cells for the same marks at the same position; a cell for all positions gives way to one that names some. */
function twice(fit: Fit, chart: readonly ChartCell[], path: string): readonly Finding[] {
  const seen = new Set<string>()
  return chart.flatMap(({ housing, journal, positions = [''] }, index) => {
    const repeated = positions.filter(
      (position) => seen.size === seen.add(`${housing} ${journal} ${position}`).size,
    )
    return repeated.length === 0
      ? []
      : [fault('chart-cell-twice', { fit: fit.name, housing, journal }, `${path}[${index}]`)]
  })
}

function absent(fit: Fit, chart: readonly ChartCell[], path: string): readonly Finding[] {
  const cells = new Set(
    chart.flatMap(({ housing, journal, positions = fit.positions }) =>
      positions.map((position) => `${housing} ${journal} ${position}`),
    ),
  )
  const charted = fit.positions.filter((position) => isCharted(fit, position))
  return fit.housing.marks.flatMap(({ mark: housing }) =>
    fit.journal.marks.flatMap(({ mark: journal }) => {
      const positions = charted.filter((position) => !cells.has(`${housing} ${journal} ${position}`))
      return positions.length === 0
        ? []
        : [doubt('chart-cell-absent', { fit: fit.name, housing, journal, positions }, path)]
    }),
  )
}
