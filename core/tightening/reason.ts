import { done, refused, type Outcome } from '../problem/index.ts'

/** Enough to be a word. It keeps a slip of the finger or a lone full stop from passing for a reason. */
const fewestLetters = 3

/**
 * A reason, an answer or a note as it is typed, blanks around it cut off. Refuses `reason-missing` with fewer
 * than three letters or digits. `of` says what is asked for, for example "why fastener 6 comes before its
 * turn".
 */
export function readReason(typed: string, of: string): Outcome<string> {
  const letters = typed.match(/[\p{L}\p{N}]/gu)?.length ?? 0
  return letters < fewestLetters ? refused('reason-missing', { of }) : done(typed.trim())
}
