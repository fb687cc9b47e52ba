import { parseNumber } from '../../quantity/index.ts'
import { inUnitOf } from './unit-of-value.ts'
import { printedValue } from './printed-value.ts'
import { withValueAt } from './value-at.ts'

/** How what is typed into a field is read: a size with its unit, a range of sizes, words, a number. */
export type TypedKind = 'size' | 'band' | 'words' | 'number'

/** One field of an entry. */
export interface TypedColumn {
  /** Where it stands in the entry: `name`, `endGap.new.least`. */
  readonly key: string
  readonly kind: TypedKind
  readonly optional?: boolean
}

/** A number as it is typed, with either decimal sign; anything else as it was typed, for the schema to refuse. */
export function typedNumber(text: string): number | string {
  const number = parseNumber(text)
  return number.ok ? number.value : text.trim()
}

/** What is typed into a field of a kind; a bare size is in `unit`. */
export function typedAs(kind: TypedKind, text: string, unit: string): unknown {
  switch (kind) {
    case 'size':
      return inUnitOf(text, `0 ${unit}`)
    case 'band':
      return typedBand(text)
    case 'number':
      return typedNumber(text)
    case 'words':
      return text.trim()
    default:
      return kind satisfies never
  }
}

/** `1.500 – 1.503 mm` is a range of sizes; anything else, `62 mm H6` say, stands as it was typed. */
export function typedBand(text: string): string | { readonly over: string; readonly upTo: string } {
  const { least, most } = printedValue(text)
  return least === undefined || most === undefined ? text.trim() : { over: least, upTo: most }
}

/** An entry of what was typed into its fields; an empty field leaves its part out. */
export function typedEntry(
  columns: readonly (TypedColumn & { readonly unit?: string })[],
  typed: Readonly<Record<string, string | undefined>>,
  unit: string,
  also: Readonly<Record<string, unknown>> = {},
): Readonly<Record<string, unknown>> {
  return columns.reduce((made, column) => {
    const text = (typed[column.key] ?? '').trim()
    if (text === '') return made
    return withValueAt(made, column.key.split('.'), typedAs(column.kind, text, column.unit ?? unit))
  }, also)
}
