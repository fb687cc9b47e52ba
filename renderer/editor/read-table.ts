import Papa from 'papaparse'
import type { Rows } from '../../core/drafts/index.ts'

/** What separates columns: tabs in what is copied from a spreadsheet; semicolons where numbers have decimal commas. */
const delimiters = ['\t', ';', ',', '|']

/** The rows of a text that was pasted from a spreadsheet or read from a CSV file; a byte order mark is left off. */
export function readTable(text: string): Rows {
  const { data } = Papa.parse<readonly string[]>(text.replace(/^\uFEFF/, ''), {
    delimitersToGuess: delimiters,
    skipEmptyLines: 'greedy',
  })
  return data
}
