import { refused, type Outcome } from '../../problem/index.ts'

/** Rows of a table as they were pasted or read from a file, each a list of texts. */
export type Rows = readonly (readonly string[])[]

/** A spreadsheet takes these for the beginning of a formula; a sign before a number is none. */
const formula = /^\s*(?:[=@]|[+-](?!\s*[\d.,]))/

/** Rows without what is empty round them; a row that has nothing in it is none. */
export function trimmed(rows: Rows): readonly (readonly string[])[] {
  return rows
    .map((row) => row.map((cell) => cell.replace(/^\uFEFF/, '').trim()))
    .filter((row) => row.some((cell) => cell !== ''))
}

/** The first cell that is a formula, as a problem. Refuses `table-cell-formula`. */
export function formulaIn(rows: Rows): Outcome<never> | null {
  for (const [row, cells] of rows.entries())
    for (const [column, text] of cells.entries())
      if (formula.test(text))
        return refused('table-cell-formula', { row: row + 1, column: column + 1, text: text.slice(0, 40) })
  return null
}
