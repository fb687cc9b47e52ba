import { z } from 'zod'
import type { Message, Problem } from '../problem/index.ts'

const messageForm = z.strictObject({
  code: z.string().min(1).max(100),
  facts: z.record(z.string(), z.unknown()),
})
const problemForm = messageForm.extend({ path: z.string() })

/**
 * A fault on its way to the window: its code and its facts, of which the window makes the sentence in its language. The form alone
 * is looked at, so that no language's words are needed to read an answer.
 */
export const problemMessage = z.custom<Problem>(
  (value) => problemForm.safeParse(value).success,
  'it is not a problem that this version knows',
)

/** A text of a table on its way to the window, as its code and facts. */
export function messageOf<Table extends object>() {
  return z.custom<Message<Table>>(
    (value) => messageForm.safeParse(value).success,
    'it is not a text that this version knows',
  )
}

/** The input of a request that asks for nothing in particular. */
export const nothing = z.strictObject({})
