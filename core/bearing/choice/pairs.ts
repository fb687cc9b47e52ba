import type { Fit } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { oilClearance, rangeOf, type Clearance, type Range } from '../clearance.ts'
import { againstLimits, targetOf, type Verdict } from '../limits.ts'

export type Half = 'upper' | 'lower'

/** The grades of the two halves of one bearing. */
export interface Pair {
  readonly upper: string
  readonly lower: string
}

/** A clearance and how it lies to the fit's limits. */
export interface JudgedClearance {
  readonly clearance: Clearance
  readonly within: Verdict
}

/** A pair that could be fitted, with what the clearance would be; null where the spec gives no sizes. */
export interface Candidate extends Pair {
  readonly judged: JudgedClearance | null
}

/** A pair of which the clearance is known. */
export interface ChosenPair extends Pair {
  readonly judged: JudgedClearance
}

/** Housing bore and journal of one bearing, as bands of marks or as readings give them. */
export interface Sizes {
  readonly bore: Range
  readonly journal: Range
}

/**
 * Every pair that the spec allows, from the thinnest to the thickest: two of one grade, and two neighbours in the list
 * of grades where mixing is allowed, the thicker in the half that the spec says.
 */
export function allowedPairs(fit: Fit): readonly Pair[] {
  return fit.grades.flatMap(({ grade }, index) => {
    const same = { upper: grade, lower: grade }
    const thicker = fit.grades[index + 1]?.grade
    if (thicker === undefined || !fit.mixing.neighbours) return [same]
    const mixed = { upper: { upper: thicker, lower: grade }, lower: { upper: grade, lower: thicker } }
    return [same, ...thickerHalves(fit).map((half) => mixed[half])]
  })
}

/** The halves that may take the thicker wall, the better one first. */
export function thickerHalves(fit: Fit): readonly [Half, ...Half[]] {
  if (fit.mixing.thicker !== 'either') return [fit.mixing.thicker]
  // The load presses on the upper half in a rod and on the lower one in a main (common practice, no source).
  return fit.kind === 'big-end' ? ['upper', 'lower'] : ['lower', 'upper']
}

/**
 * The clearance of a pair between these sizes, whether the spec allows the pair or not. `place` is named in a problem.
 *
 * Refuses `grade-unknown`, `wall-unknown`.
 */
export function judgePair(
  fit: Fit,
  place: string,
  { upper, lower }: Pair,
  sizes: Sizes,
): Outcome<JudgedClearance> {
  const upperWall = wallOf(fit, place, upper)
  if (!upperWall.ok) return upperWall
  const lowerWall = wallOf(fit, place, lower)
  if (!lowerWall.ok) return lowerWall
  const clearance = oilClearance(sizes.bore, sizes.journal, upperWall.value, lowerWall.value)
  return done({ clearance, within: againstLimits(clearance, fit.clearance) })
}

/** A pair with its clearance where sizes and walls are known. */
export function candidateOf(fit: Fit, place: string, pair: Pair, sizes: Sizes | null): Candidate {
  const judged = sizes === null ? null : judgePair(fit, place, pair, sizes)
  return { ...pair, judged: judged?.ok === true ? judged.value : null }
}

/**
 * Of candidates listed from the thinnest walls on, the one whose nominal clearance is nearest to the target. Of two
 * equally near, one grade goes before a mixture, then the looser, because a tight bearing seizes where a loose one loses
 * pressure. Null when none has a clearance.
 */
export function nearestToTarget(fit: Fit, candidates: readonly Candidate[]): ChosenPair | null {
  const twiceTarget = 2 * targetOf(fit)
  const known = candidates.flatMap(({ upper, lower, judged }) => {
    if (judged === null) return []
    const twiceNominal = judged.clearance.least + judged.clearance.most
    return [
      { upper, lower, judged, off: Math.abs(twiceNominal - twiceTarget), mixed: upper === lower ? 0 : 1 },
    ]
  })
  known.sort((a, b) => a.off - b.off || a.mixed - b.mixed)
  return known[0] ?? null
}

/** The wall at the crown of a grade. Refuses `grade-unknown`, `wall-unknown`. */
export function wallOf(fit: Fit, place: string, grade: string): Outcome<Range> {
  const found = fit.grades.find((each) => each.grade === grade)
  if (found === undefined)
    return refused('grade-unknown', { place, grade, known: fit.grades.map((each) => each.grade) })
  return found.wall === undefined ? refused('wall-unknown', { place, grade }) : done(rangeOf(found.wall))
}
