import type { Fit } from '../../engine/index.ts'
import type { Outcome } from '../../problem/index.ts'
import { chartPair } from './chart.ts'
import { knownMarks, sizesOf } from './marked.ts'
import {
  allowedPairs,
  candidateOf,
  judgePair,
  type Candidate,
  type JudgedClearance,
  type Sizes,
} from './pairs.ts'

/**
 * The pairs that a person may fit at a position: all that the mixing rule allows, from the thinnest to the thickest, and
 * the chart's own, each with its clearance where the marks and the grades have sizes.
 */
export function candidatesFor(
  fit: Fit,
  position: string,
  housing: string | null,
  journal: string | null,
): readonly Candidate[] {
  const marks = knownMarks(fit, position, housing, journal)
  const sizes = marks.ok ? sizesOf(fit, position, marks.value) : marks
  const charted = marks.ok ? chartPair(fit, position, marks.value) : null
  const allowed = allowedPairs(fit)
  const listed =
    charted === null || allowed.some(({ upper, lower }) => upper === charted.upper && lower === charted.lower)
  const pairs = listed ? allowed : [...allowed, charted]
  return pairs.map((pair) => candidateOf(fit, position, pair, sizes.ok ? sizes.value : null))
}

/** Every pair that the mixing rule allows between known sizes, from the thinnest to the thickest. */
export function candidatesBetween(fit: Fit, place: string, sizes: Sizes): readonly Candidate[] {
  return allowedPairs(fit).map((pair) => candidateOf(fit, place, pair, sizes))
}

/**
 * The clearance of any two grades between two marks, whether the spec allows the pair or not.
 *
 * Refuses `mark-worn`, `mark-unknown`, `mark-without-band`, `grade-unknown`, `wall-unknown`.
 */
export function clearanceWith(
  fit: Fit,
  housing: string | null,
  journal: string | null,
  upper: string,
  lower: string,
): Outcome<JudgedClearance> {
  const marks = knownMarks(fit, fit.name, housing, journal)
  if (!marks.ok) return marks
  const sizes = sizesOf(fit, fit.name, marks.value)
  return sizes.ok ? judgePair(fit, fit.name, { upper, lower }, sizes.value) : sizes
}
