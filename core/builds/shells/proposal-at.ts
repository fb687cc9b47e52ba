import {
  nearestToTarget,
  type Candidate,
  type Clearance,
  type Verdict,
  type ShellReason,
} from '../../bearing/index.ts'
import { problem, type Problem } from '../../problem/index.ts'
import type { Fit } from '../../engine/index.ts'
import { candidatesAt, undecidedProblem, type BearingCase } from './bearing-at.ts'
import type { NotedPin } from '../events/bearing-events.ts'
import type { ShellChoice } from '../events/events.ts'

/** One half's shell as proposed. */
export interface ProposedHalf {
  readonly grade: string
  /** `person` where it is pinned. */
  readonly by: ShellChoice['by']
  readonly reason: ShellReason
  /** The line of the tray it is taken from, null for one that must be ordered; absent where no tray was noted. */
  readonly label?: string | null
}

/** What to fit at one bearing; without shells the problem says what to do. */
export interface BearingProposal {
  readonly position: string
  readonly upper: ProposedHalf | null
  readonly lower: ProposedHalf | null
  readonly clearance: Clearance | null
  readonly within: Verdict | null
  readonly problem: Problem | null
}

/** What one bearing asks for by itself, whatever lies in the tray. */
export function proposalAt(bearing: BearingCase): BearingProposal {
  const { position, basis, pins } = bearing
  if (basis === 'undecided') return noShells(position, undecidedProblem(bearing))
  const free = basis === 'readings' ? bearing.byReadings! : bearing.byMarks
  return pins === null ? free : asPinned(bearing, free)
}

/** The pair nearest to the target of those that hold what is pinned; inside the limits if one of them is. */
function asPinned(bearing: BearingCase, free: BearingProposal): BearingProposal {
  const pins = bearing.pins!
  const fits = (pin: NotedPin | null, grade: string) =>
    pin === null || !('grade' in pin) || pin.grade === grade
  const candidates = candidatesAt(bearing).filter(
    ({ upper, lower }) => fits(pins.upper, upper) && fits(pins.lower, lower),
  )
  const chosen = bestOf(bearing.fit, candidates, free)
  if (chosen === null)
    return noShells(bearing.position, problem('pinned-outside', { place: bearing.position }))
  const byItself = bearing.basis === 'readings' ? ('readings' as const) : ('bands' as const)
  const half = (at: 'upper' | 'lower'): ProposedHalf => {
    if (pins[at] !== null) return { grade: chosen[at], by: 'person', reason: pins.reason }
    const code = chosen.judged === null ? 'allowed-beside-pinned' : 'nearest-beside-pinned'
    return chosen[at] === free[at]?.grade
      ? free[at]
      : { grade: chosen[at], by: byItself, reason: [{ code, facts: {} }] }
  }
  return {
    position: bearing.position,
    upper: half('upper'),
    lower: half('lower'),
    clearance: chosen.judged?.clearance ?? null,
    within: chosen.judged?.within ?? null,
    problem: null,
  }
}

function bestOf(fit: Fit, candidates: readonly Candidate[], free: BearingProposal): Candidate | null {
  const asFree = candidates.find(
    ({ upper, lower }) => upper === free.upper?.grade && lower === free.lower?.grade,
  )
  const inside = candidates.filter(({ judged }) => judged?.within === 'inside')
  // Without sizes, the other half stays as it was, else gets the grade of the pinned one.
  const bySizes = asFree ?? nearestToTarget(fit, inside) ?? nearestToTarget(fit, candidates)
  const kept = ({ upper, lower }: Candidate) => upper === free.upper?.grade || lower === free.lower?.grade
  const alike = ({ upper, lower }: Candidate) => upper === lower
  return bySizes ?? candidates.find(kept) ?? candidates.find(alike) ?? candidates[0] ?? null
}

/** A bearing that nothing can be proposed for, and why. */
export function noShells(position: string, why: Problem): BearingProposal {
  return { position, upper: null, lower: null, clearance: null, within: null, problem: why }
}
