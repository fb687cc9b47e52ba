import type { HelpWords } from '../../help/help-words.ts'
import { bench } from './bench.ts'
import { meanings } from './meanings.ts'
import { page } from './page.ts'
import { papers } from './papers.ts'
import { start } from './start.ts'
import { steps } from './steps.ts'
import { tightening } from './tightening.ts'

/** The help in Spanish. */
export const help: HelpWords = {
  page,
  topics: { ...start, ...steps, ...tightening, ...papers, ...bench },
  meanings,
}
