import type { Fit } from '../../engine/index.ts'
import { done, problem, refused, type Outcome, type Problem } from '../../problem/index.ts'
import { rangeSpan, type Clearance } from '../clearance.ts'
import type { Verdict } from '../limits.ts'
import { nearestToTarget, type ChosenPair, type JudgedClearance, type Pair, type Sizes } from './pairs.ts'
import { candidatesBetween } from './pick.ts'
import type { ProposalReason } from './reason.ts'

/** One half's shell as proposed: its grade, what decided, and why. */
export interface HalfProposal<By extends string = 'chart' | 'bands'> {
  readonly grade: string
  readonly by: By
  readonly reason: readonly ProposalReason[]
}

/** What to fit at one position. Where no shell can be proposed both halves are null and the problem says what to do. */
export interface Proposal<By extends string = 'chart' | 'bands'> {
  readonly position: string
  readonly upper: HalfProposal<By> | null
  readonly lower: HalfProposal<By> | null
  /** Null where the spec gives no sizes for these marks or grades. */
  readonly clearance: Clearance | null
  readonly within: Verdict | null
  /** Also beside a proposal: a chart's shells whose clearance may leave the limits. */
  readonly problem: Problem | null
}

export function withShells<By extends string>(
  fit: Fit,
  position: string,
  { upper, lower }: Pair,
  by: By,
  reason: ProposalReason,
  judged: JudgedClearance | null,
): Proposal<By> {
  const rule: readonly ProposalReason[] =
    upper === lower ? [] : [{ code: 'halves-differ', facts: { split: fit.split, upper, lower } }]
  const half = (grade: string) => ({ grade, by, reason: [reason, ...rule] })
  const doubt =
    judged === null || judged.within === 'inside'
      ? null
      : problem('clearance-leaves-limits', {
          place: position,
          clearance: rangeSpan(judged.clearance),
          limits: rangeSpan(fit.clearance),
        })
  return {
    position,
    upper: half(upper),
    lower: half(lower),
    clearance: judged?.clearance ?? null,
    within: judged?.within ?? null,
    problem: doubt,
  }
}

export function withoutShells(position: string, problem: Problem): Proposal<never> {
  return { position, upper: null, lower: null, clearance: null, within: null, problem }
}

/**
 * The pair nearest to the target of those that stay inside the limits at worst, and how many such pairs there are.
 *
 * Refuses `no-walls-known`, `no-pair-inside-limits`.
 */
export function nearestInside(
  fit: Fit,
  place: string,
  sizes: Sizes,
): Outcome<ChosenPair & { readonly of: number }> {
  const candidates = candidatesBetween(fit, place, sizes)
  const inside = candidates.filter(({ judged }) => judged?.within === 'inside')
  const chosen = nearestToTarget(fit, inside)
  if (chosen !== null) return done({ ...chosen, of: inside.length })
  const nearestPair = nearestToTarget(fit, candidates)
  if (nearestPair === null) return refused('no-walls-known', { place })
  const { upper, lower } = nearestPair
  const clearance = rangeSpan(nearestPair.judged.clearance)
  return refused('no-pair-inside-limits', {
    place,
    pair: { split: fit.split, upper, lower },
    clearance,
    limits: rangeSpan(fit.clearance),
  })
}
