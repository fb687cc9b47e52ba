import type { Fit } from '../spec/index.ts'
import { problem, type Problem } from '../problem/index.ts'
import { chartPair, hasChartAt } from './chart.ts'
import { rangeText, type Clearance } from './clearance.ts'
import type { Verdict } from './limits.ts'
import { knownMarks, sizesOf, type MarkPair } from './marked.ts'
import type { Marks } from './marks.ts'
import {
  allowedPairs,
  candidateOf,
  judgePair,
  nearestToTarget,
  wallOf,
  type Judged,
  type Pair,
} from './pairs.ts'

/** One half's shell as proposed: its grade, what decided, and why in a sentence. */
export interface HalfProposal {
  readonly grade: string
  readonly by: 'chart' | 'bands'
  readonly reason: string
}

/** What to fit at one position. Where no shell can be proposed both halves are null and the problem says what to do. */
export interface Proposal {
  readonly position: string
  readonly upper: HalfProposal | null
  readonly lower: HalfProposal | null
  /** Null where the spec gives no sizes for these marks or grades. */
  readonly clearance: Clearance | null
  readonly within: Verdict | null
  /** Also beside a proposal: a chart's shells whose clearance may leave the limits. */
  readonly problem: Problem | null
}

/**
 * The shells for every position of a fit from the marks of both parts, given in the order of `fit.positions`.
 *
 * A chart decides where the spec has one for the position, and only it: a pair of marks that is not in it is not
 * guessed at. Elsewhere the bands of the marks decide: of the allowed pairs whose clearance stays inside the limits at
 * worst, the one nearest to the target. A worn mark gives no proposal.
 */
export function proposeShells(fit: Fit, housing: Marks, journal: Marks): readonly Proposal[] {
  return fit.positions.map((position, index) => {
    const marks = knownMarks(fit, position, housing[index] ?? null, journal[index] ?? null)
    if (!marks.ok) return withoutShells(position, marks.problem)
    return hasChartAt(fit, position)
      ? fromChart(fit, position, marks.value)
      : fromBands(fit, position, marks.value)
  })
}

function fromChart(fit: Fit, position: string, marks: MarkPair): Proposal {
  const pair = chartPair(fit, position, marks)
  if (pair === null)
    return withoutShells(position, problem('chart-cell-missing', { place: position, ...marks }))
  for (const grade of [pair.upper, pair.lower]) {
    const wall = wallOf(fit, position, grade)
    if (!wall.ok && wall.problem.code === 'grade-unknown') return withoutShells(position, wall.problem)
  }
  const sizes = sizesOf(fit, position, marks)
  const judged = sizes.ok ? judgePair(fit, position, pair, sizes.value) : sizes
  const reason = `The chart gives this for housing mark ${marks.housing} and journal mark ${marks.journal}.`
  return withShells(fit, position, pair, 'chart', reason, judged.ok ? judged.value : null)
}

function fromBands(fit: Fit, position: string, marks: MarkPair): Proposal {
  const sizes = sizesOf(fit, position, marks)
  if (!sizes.ok) return withoutShells(position, sizes.problem)
  const candidates = allowedPairs(fit).map((pair) => candidateOf(fit, position, pair, sizes.value))
  const inside = candidates.filter(({ judged }) => judged?.within === 'inside')
  const chosen = nearestToTarget(fit, inside)
  if (chosen !== null) {
    const reason =
      `Nearest to the target of the ${inside.length} allowed pairs that stay inside the limits ` +
      `with housing mark ${marks.housing} and journal mark ${marks.journal}.`
    return withShells(fit, position, chosen, 'bands', reason, chosen.judged)
  }
  const nearest = nearestToTarget(fit, candidates)
  if (nearest === null) return withoutShells(position, problem('no-walls-known', { place: position }))
  const { upper, lower } = nearest
  const clearance = rangeText(nearest.judged.clearance)
  const facts = { place: position, upper, lower, clearance, limits: rangeText(fit.clearance) }
  return withoutShells(position, problem('no-pair-inside-limits', facts))
}

function withShells(
  fit: Fit,
  position: string,
  { upper, lower }: Pair,
  by: HalfProposal['by'],
  reason: string,
  judged: Judged | null,
): Proposal {
  const rule = upper === lower ? '' : ` The halves differ: ${upper} goes above and ${lower} below.`
  const half = (grade: string) => ({ grade, by, reason: reason + rule })
  const clearance = judged?.clearance ?? null
  const doubt =
    clearance === null || judged?.within === 'inside'
      ? null
      : problem('clearance-leaves-limits', {
          place: position,
          clearance: rangeText(clearance),
          limits: rangeText(fit.clearance),
        })
  return {
    position,
    upper: half(upper),
    lower: half(lower),
    clearance,
    within: judged?.within ?? null,
    problem: doubt,
  }
}

function withoutShells(position: string, problem: Problem): Proposal {
  return { position, upper: null, lower: null, clearance: null, within: null, problem }
}
