import Papa from 'papaparse'
import type { Rows } from '../../../core/drafts/index.ts'

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

/** Far more than a table of a spec has. */
export const mostTableBytes = 5 * 1024 * 1024

/**
 * The text of a file with a table: in UTF-16 or UTF-8 where a mark of byte order says so, else in UTF-8; what is none was saved by
 * a spreadsheet in the eight-bit code of Western Windows, in which µ and ° are one byte each.
 */
export function tableText(bytes: ArrayBuffer): string {
  const [first, second] = new Uint8Array(bytes)
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}
