import { done, refused, type Facts, type Outcome } from '../../problem/index.ts'

/** Enough to be a word. It keeps a slip of the finger or a lone full stop from passing for a reason. */
const fewestLetters = 3

/**
 * A reason, an answer or a note as it is typed, blanks around it cut off. Refuses `reason-missing` with fewer
 * than three letters or digits.
 */
export function readReason(typed: string, reasonFor: Facts<'reason-missing'>['reasonFor']): Outcome<string> {
  const letters = typed.match(/[\p{L}\p{N}]/gu)?.length ?? 0
  return letters < fewestLetters ? refused('reason-missing', { reasonFor }) : done(typed.trim())
}
