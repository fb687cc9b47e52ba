import type { ChartCell, Fit } from '../../engine/index.ts'
import type { MarkPair } from './marked.ts'
import { thickerHalves, type Pair } from './pairs.ts'

/** Whether the spec's chart says anything about this position. Where it does, the chart alone decides. */
export function hasChartAt(fit: Fit, position: string): boolean {
  return (fit.chart ?? []).some((cell) => cell.positions === undefined || cell.positions.includes(position))
}

/**
 * The chart's shells for two marks; null when it has no such cell. A cell that names the position goes before one for
 * all positions. Of two grades that differ, the half that the fit's mixing rule names takes the thicker one, whichever
 * way round the cell was written.
 */
export function chartPair(fit: Fit, position: string, marks: MarkPair): Pair | null {
  const cells = (fit.chart ?? []).filter(
    (each) => each.housing === marks.housing && each.journal === marks.journal,
  )
  const own = cells.find((each) => each.positions?.includes(position))
  const cell = own ?? cells.find((each) => each.positions === undefined)
  return cell === undefined ? null : inOrder(fit, cell)
}

function inOrder(fit: Fit, { upper, lower }: ChartCell): Pair {
  const thickness = (grade: string) => fit.grades.findIndex((each) => each.grade === grade)
  const thicker = thickness(upper) > thickness(lower) ? 'upper' : 'lower'
  return thickerHalves(fit).includes(thicker) ? { upper, lower } : { upper: lower, lower: upper }
}
