/** One field of the entries of a list: a size with its unit, words, a number, or one of some choices. */
export interface EntryColumn {
  /** Where it stands in an entry: `name`, `endGap.new.least`. */
  readonly key: string
  readonly label: string
  readonly kind: 'size' | 'words' | 'number'
  readonly choices?: readonly { readonly value: string; readonly text: string }[]
  readonly optional?: boolean
  /** Of a bare number; that of the manual when absent. */
  readonly unit?: string
}
