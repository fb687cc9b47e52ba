import Papa from 'papaparse'
import { clearanceText } from '../../core/bearing/index.ts'
import type { WantedPart } from '../../core/builds/index.ts'
import type { Words } from '../../core/words/index.ts'
import type { LabelRow, OrderRow } from './tray-rows.ts'

/** The order list for a spreadsheet or a supplier: RFC 4180, a line for each kind. */
export function orderCsv(words: Words, rows: readonly OrderRow[]): string {
  return csvOf(
    ['fit', 'grade', 'size', 'half', 'count', 'for'],
    rows.map(({ fit, grade, size, half, count, waiting }) => [
      ...[fit, grade, size ?? words.engineParts.standardSize, words.tray.order.halves[half]],
      ...[count, waiting],
    ]),
  )
}

/** Everything that has to be got, shells, parts and fasteners, for a supplier: a line for each kind. */
export function wholeOrderCsv(
  words: Words,
  shells: readonly OrderRow[],
  parts: readonly WantedPart[],
): string {
  const { partsList, tray } = words
  return csvOf(
    ['name', 'what', 'count', 'place', 'when', 'number', 'for'],
    [
      ...shells.map(({ fit, grade, size, half, count, waiting }) => [
        ...[partsList.orderList.shellsOf({ fit }), partsList.orderList.grade({ grade, size }), count],
        ...[tray.order.halves[half], '', '', waiting],
      ]),
      ...parts.map(({ kind, name, count, place, reuse, steps }) => [
        ...[name, kind, count, place, partsList.reuse(reuse), '', steps.join(', ')],
      ]),
    ],
  )
}

/** The labels for a label printer: a line for each half. */
export function labelsCsv(words: Words, rows: readonly LabelRow[]): string {
  return csvOf(
    ['position', 'half', 'grade', 'pattern', 'size', 'clearance', 'from', 'code'],
    rows.map(({ position, half, grade, undersize, clearance, from, code }) => [
      ...[position, words.engineParts.halves[half], grade.grade, grade.pattern],
      ...[
        undersize ?? words.engineParts.standardSize,
        clearance === null ? '' : clearanceText(words, clearance),
      ],
      ...[from === null ? '' : (from.place ?? words.tray.label.toOrder), code],
    ]),
  )
}

function csvOf(fields: string[], data: (string | number)[][]): string {
  // What a person typed may begin like a formula; a spreadsheet must not run it.
  // The mark at the start says to spreadsheets that it is UTF-8: `µm` comes out right.
  // A number keeps to its unit in the window alone: spreadsheets and suppliers look for a plain space.
  const lines = Papa.unparse({ fields, data }, { escapeFormulae: true }).replaceAll('\u00a0', ' ')
  return `\ufeff${lines}\r\n`
}
