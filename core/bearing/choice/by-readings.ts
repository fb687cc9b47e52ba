import type { Fit } from '../../engine/index.ts'
import type { Length } from '../../quantity/index.ts'
import { exactly, oilClearance, type Clearance, type Range } from '../clearance.ts'
import { guardedLimits } from '../sizes/guard.ts'
import type { MeasuredSize } from '../sizes/measured.ts'
import type { Sizes } from './pairs.ts'
import { nearestInside, withoutShells, withShells, type Proposal } from './proposal.ts'

/** Bore, with its cap tight, and journal of one bearing as measured. */
export interface MeasuredBearing {
  readonly bore: MeasuredSize
  readonly journal: MeasuredSize
}

/** What readings say of the oil clearance with given walls; each a range because the walls are one. */
export interface MeasuredClearance {
  /** Smallest bore, largest journal: the one that counts. */
  readonly counts: Clearance
  readonly mean: Clearance
  /** Largest bore, smallest journal. */
  readonly greatest: Clearance
}

export function measuredClearance(
  { bore, journal }: MeasuredBearing,
  upperWall: Range,
  lowerWall: Range,
): MeasuredClearance {
  const between = (bore: Length, journal: Length) =>
    oilClearance(exactly(bore), exactly(journal), upperWall, lowerWall)
  return {
    counts: between(bore.least, journal.most),
    mean: between(bore.mean, journal.mean),
    greatest: between(bore.most, journal.least),
  }
}

/**
 * The shells for one position from its readings, or where one of the parts is known by its mark alone: of the allowed pairs, the
 * one nearest to the target of those whose clearance stays inside the limits, these drawn in by what the clearance is uncertain by.
 */
export function proposeBySizes(
  fit: Fit,
  position: string,
  sizes: Sizes,
  uncertainty: Length,
): Proposal<'readings'> {
  const guarded = guardedLimits(fit.clearance, uncertainty)
  if (!guarded.ok) return withoutShells(position, guarded.problem)
  const drawnIn = { ...fit, clearance: { ...fit.clearance, ...guarded.value } }
  const chosen = nearestInside(drawnIn, position, sizes)
  if (!chosen.ok) return withoutShells(position, chosen.problem)
  const reason = { code: 'by-readings', facts: { of: chosen.value.of } } as const
  return withShells(fit, position, chosen.value, 'readings', reason, chosen.value.judged)
}
