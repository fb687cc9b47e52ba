import { archive } from './archive.ts'
import { engines } from './engines.ts'
import { keys } from './keys.ts'
import { parts } from './parts.ts'
import { problems } from './problems/index.ts'
import { settings } from './settings.ts'
import { window } from './window.ts'

/** Every text of the program that a person reads, in English, in one table for each subject. */
export const en = { archive, engines, keys, parts, problems, settings, window }
