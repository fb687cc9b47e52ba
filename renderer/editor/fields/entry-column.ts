import type { TypedColumn } from '../../../core/drafts/index.ts'

/** One field of the entries of a list, or of a part that may be left out. */
export interface EntryColumn extends TypedColumn {
  readonly label: string
  readonly choices?: readonly { readonly value: string; readonly text: string }[]
  /** Of a bare number; that of the manual when absent. */
  readonly unit?: string
  /** Of words that people read: in several languages, as long as they need to be. */
  readonly isSentence?: boolean
  readonly example?: string
}

/** The fields that an entry cannot be without, as they are called, with what each has so far. */
export function needsOf(
  columns: readonly EntryColumn[],
  typed: Readonly<Record<string, string | undefined>>,
): readonly (readonly [name: string, value: string])[] {
  return columns.flatMap(({ key, label, optional }) =>
    optional === true ? [] : [[label, typed[key] ?? ''] as const],
  )
}
