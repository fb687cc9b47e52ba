import { z } from 'zod'
import type { Words } from '../words/index.ts'

/** What was done about a flag, where the procedure or the way out of it says so itself. */
export const flagDeed = z.enum(['replaced', 'begun-again', 'turned-on', 'tightened-on', 'pass-repeated'])
export type FlagDeed = z.output<typeof flagDeed>

/** What was done about a flag: as a person typed it, or by what came after it. */
export type FlagAnswer = string | { readonly deed: FlagDeed }

/** What earlier versions wrote into the entry for a deed. */
const onceWritten: ReadonlyMap<string, FlagDeed> = new Map([
  ['Loosened, replaced by a new one, and begun again from its first pass.', 'replaced'],
  ['Loosened, and begun again from its first pass.', 'begun-again'],
  ['Turned on from where it stood.', 'turned-on'],
  ['The pass is gone through again until none moves.', 'pass-repeated'],
])

interface Answered {
  readonly answer?: string | undefined
  readonly deed?: FlagDeed | undefined
}

/** An answer as it is recorded now: the sentence of an earlier version as the deed that it stands for. */
export function liftedAnswer<Event extends Answered>(event: Event): Event {
  const deed = event.answer === undefined ? undefined : onceWritten.get(event.answer)
  if (deed === undefined) return event
  const { answer: _, ...rest } = event
  return { ...rest, deed } as Event
}

/** The answer of an entry, whichever version wrote it. */
export function answerOf(event: Answered): FlagAnswer {
  const { answer = '', deed } = liftedAnswer(event)
  return deed === undefined ? answer : { deed }
}

/** An answer as it is read. */
export function answerText(words: Words, answer: FlagAnswer): string {
  return typeof answer === 'string' ? answer : words.flags.deeds[answer.deed]
}
