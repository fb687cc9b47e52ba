import type { Language } from '../language.ts'
import type { HelpWords } from './help-words.ts'

/** The help in each language, loaded when it is asked for: the first page does without. */
export const helpWords = {
  en: () => import('../en/help/index.ts').then(({ help }) => help),
  de: () => import('../de/help/index.ts').then(({ help }) => help),
  es: () => import('../es/help/index.ts').then(({ help }) => help),
} as const satisfies Readonly<Record<Language, () => Promise<HelpWords>>>
