import type { Fit } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import type { GrownCell } from './grow.ts'
import { formulaIn, trimmed, type Rows } from './table.ts'

/** A chart has no more cells. */
const mostCells = 2000

/**
 * A chart from the rows of a spreadsheet: housing marks down the side and journal marks along the head, or the other way round; in
 * each cell one grade, or upper and lower with a stroke or blank between them.
 *
 * Refuses `table-empty`, `table-cell-formula`, `chart-too-large`, `chart-head-unread` where the head has no marks of the fit,
 * `chart-row-unread` and `chart-row-long` for a row, `chart-cell-unread` for a cell, and `chart-rows-missing` where a mark has no row.
 */
export function chartFromRows(rows: Rows, fit: Fit): Outcome<readonly GrownCell[]> {
  const [head, ...body] = trimmed(rows)
  if (head === undefined || body.length === 0) return refused('table-empty', {})
  const cellCount = body.reduce((count, row) => count + row.length, 0)
  if (cellCount > mostCells) return refused('chart-too-large', { cells: cellCount, most: mostCells })
  const withFormula = formulaIn([head, ...body])
  if (withFormula !== null) return withFormula
  const marks = {
    housing: fit.housing.marks.map(({ mark }) => mark),
    journal: fit.journal.marks.map(({ mark }) => mark),
  }
  const along = head.slice(1)
  const down = body.map(([mark = '']) => mark)
  const isUpright = all(along, marks.journal) && down.some((mark) => marks.housing.includes(mark))
  const isTurned =
    !isUpright && all(along, marks.housing) && down.some((mark) => marks.journal.includes(mark))
  if (!isUpright && !isTurned)
    return refused('chart-head-unread', {
      found: along.slice(0, 12),
      housing: marks.housing,
      journal: marks.journal,
    })
  const sideMarks = isTurned ? marks.journal : marks.housing

  const cells: GrownCell[] = []
  for (const [index, [side = '', ...grades]] of body.entries()) {
    const row = index + 2
    if (!sideMarks.includes(side)) return refused('chart-row-unread', { row, found: side, known: sideMarks })
    if (down.indexOf(side) < index) return refused('chart-row-twice', { row, mark: side })
    if (grades.slice(along.length).some((grade) => grade !== ''))
      return refused('chart-row-long', { row, found: grades.length, most: along.length })
    for (const [column, mark] of along.entries()) {
      const pair = pairIn(grades[column] ?? '', fit)
      if (pair === null)
        return refused('chart-cell-unread', {
          ...{ row, column: column + 2, found: (grades[column] ?? '').slice(0, 40) },
          known: fit.grades.map(({ grade }) => grade),
        })
      cells.push({ housing: isTurned ? mark : side, journal: isTurned ? side : mark, ...pair })
    }
  }
  const missing = sideMarks.filter((mark) => !down.includes(mark))
  if (missing.length > 0) return refused('chart-rows-missing', { marks: missing })
  const short = (isTurned ? marks.housing : marks.journal).filter((mark) => !along.includes(mark))
  return short.length > 0 ? refused('chart-rows-missing', { marks: short }) : done(cells)
}

/** Marks of the fit, each once: a mark that is not there is reported by its row, and not taken for a head. */
function all(found: readonly string[], known: readonly string[]): boolean {
  return (
    found.length > 0 && new Set(found).size === found.length && found.every((mark) => known.includes(mark))
  )
}

function pairIn(text: string, { grades }: Fit): { readonly upper: string; readonly lower: string } | null {
  const [upper = '', lower = upper, ...more] = text.toUpperCase().split(/\s*[/|;+]\s*|\s+/)
  const isKnown = (name: string) => grades.some(({ grade }) => grade === name)
  return more.length === 0 && isKnown(upper) && isKnown(lower) ? { upper, lower } : null
}
