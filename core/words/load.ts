import type { Language } from './language.ts'
import type { Words } from './words.ts'

/** Each language's table is a script of its own, so that a window loads the one that it shows. */
const tables: { readonly [Each in Language]?: () => Promise<Words> } = {
  en: async () => (await import('./en/index.ts')).en,
}

/** The languages that there are words in, in the order in which they are offered. */
export const languagesThere = Object.keys(tables) as readonly Language[]

/** The words of a language; those in English where it has no table. */
export function loadWords(language: Language): Promise<Words> {
  return (tables[language] ?? tables.en!)()
}
