import { z } from 'zod'
import type { Words } from '../../words/index.ts'

/** What was done about a flag, where the procedure or the way out of it says so itself. */
export const flagDeed = z.enum(['replaced', 'begun-again', 'turned-on', 'tightened-on', 'pass-repeated'])
export type FlagDeed = z.output<typeof flagDeed>

/**
 * Why a fastener was loosened, a run begun again or a part taken out, where the program asked for it: too much on a
 * fastener, which is then replaced or begun again; a gap of the joint face out of its limits; or that a run which begins again
 * has opened the joint, sealant and all; or that the crank took too much to turn.
 */
export const cause = z.enum(['to-be-replaced', 'to-begin-again', 'gap-out', 'joint-opened', 'crank-stiff'])
export type Cause = z.output<typeof cause>

/** Why something was done: as a person typed it, or as the program asked for it. */
export type Reason = string | { readonly cause: Cause }

/** What was done about a flag: as a person typed it, or by what came after it. */
export type FlagAnswer = Reason | { readonly deed: FlagDeed }

/** What earlier versions wrote into the entry for a cause. */
const causesOnceWritten: ReadonlyMap<string, Cause> = new Map([
  ['Too much: to be replaced', 'to-be-replaced'],
  ['Too much: to begin again', 'to-begin-again'],
  ['The gap was out of its limits', 'gap-out'],
])

interface Reasoned {
  readonly reason?: string | undefined
  readonly cause?: Cause | undefined
  readonly measuredAgain?: true | undefined
}

/** A reason as it is recorded now: the sentence of an earlier version as the cause that it stands for. */
export function liftedReason<Event extends Reasoned>(event: Event): Event {
  const found = event.reason === undefined ? undefined : causesOnceWritten.get(event.reason)
  // Only what the program wrote, not a person who typed the same.
  if (found === undefined || (found === 'gap-out' && event.measuredAgain !== true)) return event
  const { reason: _, ...rest } = event
  return { ...rest, cause: found } as Event
}

/** The reason of an entry, whichever version wrote it. */
export function reasonOf(event: Reasoned): Reason {
  const { reason = '', cause } = liftedReason(event)
  return cause === undefined ? reason : { cause }
}

/** What earlier versions wrote into the entry for a deed. */
const onceWritten: ReadonlyMap<string, FlagDeed> = new Map([
  ['Loosened, replaced by a new one, and begun again from its first pass.', 'replaced'],
  ['Loosened, and begun again from its first pass.', 'begun-again'],
  ['Turned on from where it stood.', 'turned-on'],
  ['The pass is gone through again until none moves.', 'pass-repeated'],
])

interface RecordedAnswer {
  readonly answer?: string | undefined
  readonly deed?: FlagDeed | undefined
}

/** An answer as it is recorded now: the sentence of an earlier version as the deed that it stands for. */
export function liftedAnswer<Event extends RecordedAnswer>(event: Event): Event {
  const deed = event.answer === undefined ? undefined : onceWritten.get(event.answer)
  if (deed === undefined) return event
  const { answer: _, ...rest } = event
  return { ...rest, deed } as Event
}

/** The answer of an entry, whichever version wrote it. */
export function answerOf(event: RecordedAnswer): FlagAnswer {
  const { answer = '', deed } = liftedAnswer(event)
  return deed === undefined ? answer : { deed }
}

/** An answer or a reason as it is read. */
export function answerText(words: Words, answer: FlagAnswer): string {
  if (typeof answer === 'string') return answer
  return 'deed' in answer ? words.flags.deeds[answer.deed] : words.flags.causes[answer.cause]
}
