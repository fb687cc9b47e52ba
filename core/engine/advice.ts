import type { Phrase, Problem } from '../problem/index.ts'

/** What to write instead of a value that cannot be read: a clause of the words, or what is wrong with the text. */
export type Advice = Phrase | Problem

type Facts<Code extends Phrase['code']> = Extract<Phrase, { readonly code: Code }>['facts']

/** An advice as the message of a schema, which is a text to Zod. */
export function advise<Code extends Phrase['code']>(
  code: Code,
  ...[facts]: Record<never, never> extends Facts<Code> ? [] : [Facts<Code>]
): string {
  return adviceMessage({ code, facts: facts ?? {} } as Phrase)
}

export function adviceMessage(advice: Advice): string {
  return JSON.stringify(advice)
}

/** The advice of a message that `adviceMessage` made; null for a message of Zod's own. */
export function adviceIn(message: string): Advice | null {
  return message.startsWith('{"code":') ? (JSON.parse(message) as Advice) : null
}
