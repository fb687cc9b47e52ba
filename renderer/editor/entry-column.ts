/** One field of the entries of a list: a size with its unit, words, or one of some choices. */
export interface EntryColumn {
  readonly key: string
  readonly label: string
  readonly kind: 'size' | 'words'
  readonly choices?: readonly { readonly value: string; readonly text: string }[]
  readonly optional?: boolean
  /** Of a bare number; that of the manual when absent. */
  readonly unit?: string
}
