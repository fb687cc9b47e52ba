/**
 * The twelfth form: the words of a build are in every language. The tables stay; as after each migration, the lists and these words are
 * made again from the entries.
 */
export const searchInLanguages = {
  version: 12,
  sql: '',
} as const
