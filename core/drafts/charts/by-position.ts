import type { ChartCell } from '../../engine/index.ts'
import type { GrownCell } from './grow.ts'

/** Bearings that have a chart of their own, by their ids; null for all that have none. */
export type ChartPositions = readonly string[] | null

type Cells = readonly ChartCell[]

const keyOf = (positions: ChartPositions | undefined) => (positions ?? []).join(' ')

/** For which bearings a fit has charts, each once: those for all first. */
export function chartPositions(chart: Cells = []): readonly ChartPositions[] {
  const found = new Map<string, ChartPositions>([['', null]])
  for (const { positions } of chart) found.set(keyOf(positions), positions ?? null)
  return [...found.values()]
}

/** Whether a cell is of the chart for these bearings. */
export function isInChart(cell: Pick<ChartCell, 'positions'>, positions: ChartPositions): boolean {
  return keyOf(cell.positions) === keyOf(positions)
}

/** The cells of a fit with others in the chart for these bearings, or with none; undefined where none is left at all. */
export function withChartFor(
  chart: Cells = [],
  positions: ChartPositions,
  cells: readonly GrownCell[] | undefined,
): Cells | undefined {
  const own = (cells ?? []).map((cell) =>
    positions === null ? cell : { ...cell, positions: [...positions] },
  )
  const all = [...chart.filter((cell) => !isInChart(cell, positions)), ...own]
  return all.length === 0 ? undefined : all
}
