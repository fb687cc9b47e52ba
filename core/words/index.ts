import { en } from './en/index.ts'
import type { Table } from './table.ts'

export { en }
export { isLanguage, languageNames, languageOf, languages } from './language.ts'
export type { Language } from './language.ts'
export { auditProblems } from './en/problems/index.ts'
export type { Amount, AmountText, Span } from './amount.ts'
export type { PhraseText } from './phrase.ts'
export type { ReasonText } from './reason.ts'
export type { RichText } from './rich.ts'
export type { Table } from './table.ts'

/**
 * The texts of one language: a table for each subject; a message is a text, or a function from its facts to a text.
 * Facts are numbers, identifiers, enumerations and what people typed, never texts of the program. English is the
 * pattern; another language is a table of this type.
 */
export type Words = Table<typeof en>
