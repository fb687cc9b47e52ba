import { z } from 'zod'
import { isProblemCode, sentenceOf, type Problem } from '../problem/index.ts'

const form = z.strictObject({
  code: z.string(),
  path: z.string(),
  facts: z.record(z.string(), z.unknown()),
})

/** A fault on its way to the window: its code and its facts, of which the window makes the sentence. */
export const problemMessage = z.custom<Problem>((value) => {
  const read = form.safeParse(value)
  return read.success && isProblemCode(read.data.code) && hasSentence(value as Problem)
}, 'it is not a problem that this version knows')

function hasSentence(problem: Problem): boolean {
  try {
    return sentenceOf(problem) !== ''
  } catch {
    return false
  }
}

/** The input of a request that asks for nothing in particular. */
export const nothing = z.strictObject({})
