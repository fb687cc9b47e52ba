import type { Language } from './language.ts'
import type { Words } from './words.ts'

/** Each language's table is a script of its own, so that a window loads the one that it shows. */
const tables: { readonly [Each in Language]: () => Promise<Words> } = {
  en: async () => (await import('./en/index.ts')).en,
  de: async () => (await import('./de/index.ts')).de,
  es: async () => (await import('./es/index.ts')).es,
}

export function loadWords(language: Language): Promise<Words> {
  return tables[language]()
}
