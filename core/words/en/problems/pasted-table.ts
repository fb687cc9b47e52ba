import type { ReasonText } from '../../reason.ts'
import { counted } from '../formats.ts'

type None = Record<never, never>
export interface CellOfTable {
  readonly row: number
  readonly column: number
}

/** What is said of tables that are pasted from a spreadsheet or read from a CSV file. Rows and columns are counted from 1. */
export const pastedTableWords = {
  'table-empty': (_: None) => 'There is no table in that. Copy its head and its rows, and paste them again.',
  'table-too-long': ({ rows, most }: { readonly rows: number; readonly most: number }) =>
    `The table has ${counted(rows, 'row', 'rows')}, and a spec has ${most} fasteners at the most. Take in a part of it.`,
  'table-cell-formula': ({ row, column, text }: CellOfTable & { readonly text: string }) =>
    `Row ${row}, column ${column} is a formula, “${text}”, and not a value. Copy the values alone and paste them again.`,
  'table-cell-unread': ({ row, column, why }: CellOfTable & { readonly why: ReasonText }) =>
    `Row ${row}, column ${column} cannot be read, and nothing was taken in. ${why}`,
  'chart-too-large': ({ cells, most }: { readonly cells: number; readonly most: number }) =>
    `The table has ${counted(cells, 'cell', 'cells')}, and a chart has ${most} at the most. Paste the chart of one fit alone.`,
  'chart-head-unread': (facts: {
    readonly found: readonly string[]
    readonly housing: readonly string[]
    readonly journal: readonly string[]
  }) =>
    `The head of the table has ${facts.found.join(', ') || 'nothing'}. One side of it must have the housing marks ` +
    `${facts.housing.join(', ')}, the other the journal marks ${facts.journal.join(', ')}. Copy the marks with the chart, or add the marks that the fit does not have.`,
  'chart-row-unread': ({
    row,
    found,
    known,
  }: {
    readonly row: number
    readonly found: string
    readonly known: readonly string[]
  }) =>
    `Row ${row} begins with “${found}”, which is no mark of this fit (${known.join(', ')}). Mend it, or add the mark to the fit first.`,
  'chart-row-twice': ({ row, mark }: { readonly row: number; readonly mark: string }) =>
    `Row ${row} is a second one for the mark ${mark}. Leave one of them out.`,
  'chart-row-long': ({
    row,
    found,
    most,
  }: {
    readonly row: number
    readonly found: number
    readonly most: number
  }) =>
    `Row ${row} has ${counted(found, 'cell', 'cells')} and the head ${counted(most, 'mark', 'marks')}. Look whether a cell has slipped.`,
  'chart-cell-unread': ({
    row,
    column,
    found,
    known,
  }: CellOfTable & { readonly found: string; readonly known: readonly string[] }) =>
    `Row ${row}, column ${column} ${found === '' ? 'is empty' : `has “${found}”`}. Write one grade of this fit (${known.join(', ')}), or two with a stroke between them, the upper one first.`,
  'chart-rows-missing': ({ marks }: { readonly marks: readonly string[] }) =>
    `The table says nothing of the ${marks.length === 1 ? 'mark' : 'marks'} ${marks.join(', ')}. Copy the whole chart, its last row and column too.`,
  'positions-columns-missing': ({
    missing,
    found,
  }: {
    readonly missing: readonly string[]
    readonly found: readonly string[]
  }) =>
    `The table has the columns ${found.join(', ')}, and ${missing.join(' and ')} ${missing.length === 1 ? 'is' : 'are'} missing. Call two of them x and y.`,
  'positions-group-unknown': ({ group }: { readonly group: string }) =>
    `There is no fastener group “${group}”. Add it under “Groups” first, or leave the column out.`,
  'positions-number-unread': ({ number }: { readonly number: string }) =>
    `“${number}” is no number for the drawing. Write up to three digits, with a letter before them where there is one.`,
}
