import { en } from '../words/index.ts'
import { sentenceIn, type Problem } from './index.ts'

/** The sentence of a problem in English: for a log, and a part that has no choice of language. */
export function sentenceOf(problem: Problem): string {
  return sentenceIn(en, problem)
}
