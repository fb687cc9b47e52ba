import { z } from 'zod'
import { isProblemCode, sentenceOf, textIn, type Message, type Problem } from '../problem/index.ts'
import { en } from '../words/index.ts'

const messageForm = z.strictObject({ code: z.string(), facts: z.record(z.string(), z.unknown()) })
const problemForm = messageForm.extend({ path: z.string() })

/** A fault on its way to the window: its code and its facts, of which the window makes the sentence. */
export const problemMessage = z.custom<Problem>((value) => {
  const read = problemForm.safeParse(value)
  return read.success && isProblemCode(read.data.code) && isText(() => sentenceOf(value as Problem))
}, 'it is not a problem that this version knows')

/** A text of this table on its way to the window, as its code and facts. */
export function messageOf<Table extends object>(table: Table) {
  return z.custom<Message<Table>>((value) => {
    const read = messageForm.safeParse(value)
    if (!read.success || !Object.hasOwn(table, read.data.code)) return false
    return isText(() => textIn(en, table, value as Message<Table>))
  }, 'it is not a text that this version knows')
}

function isText(make: () => string): boolean {
  try {
    return make() !== ''
  } catch {
    return false
  }
}

/** The input of a request that asks for nothing in particular. */
export const nothing = z.strictObject({})
