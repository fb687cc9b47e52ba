import { keys } from './keys.ts'
import { problems } from './problems/index.ts'
import { settings } from './settings.ts'

/** Every text of the program that a person reads, in English, in one table for each subject. */
export const en = { keys, problems, settings }
