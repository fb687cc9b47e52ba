import type { en } from './en/index.ts'
import type { Table } from './table.ts'

/**
 * The texts of one language: a table for each subject; a message is a text, or a function from its facts to a text.
 * Facts are numbers, identifiers, enumerations and what people typed, never texts of the program. English is the
 * pattern; another language is a table of this type.
 */
export type Words = Table<typeof en>
