import {
  againstLimits,
  assignFromTray,
  nearestToTarget,
  oilClearance,
  type Assignment,
  type Candidate,
  type Clearance,
  type OpenBearing,
  type Range,
  type Tray,
  type Verdict,
} from '../bearing/index.ts'
import { done, problem, type Outcome, type Problem } from '../problem/index.ts'
import { difference, nanometres, sum } from '../quantity/index.ts'
import type { EngineSpec, Fit } from '../spec/index.ts'
import { bearingAt, candidatesAt, undecidedProblem, type BearingCase } from './bearing-at.ts'
import type { NotedPin } from './bearing-events.ts'
import type { NotedTray } from './bearing-record.ts'
import type { ShellChoice } from './events.ts'
import { bearingsIn, type BuildState } from './state.ts'
import { fitOf } from './steps.ts'

/** One half's shell as proposed. */
export interface ProposedHalf {
  readonly grade: string
  /** `person` where it is pinned. */
  readonly by: ShellChoice['by']
  readonly reason: string
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

/** What `proposalsFor` found, by state and fit: a state never changes, and every view of it asks. */
const known = new WeakMap<BuildState, Map<string, readonly BearingProposal[]>>()

/**
 * The shells for each position of a fit, as marks, readings, pins and the tray ask for; none while the marks of a part are
 * missing. Where a tray was noted, all bearings are filled from it at once.
 */
export function proposalsFor(spec: EngineSpec, state: BuildState, fitId: string): readonly BearingProposal[] {
  const marks = state.marks[fitId]
  if (!marks?.housing || !marks.journal) return []
  const ofState = known.get(state) ?? new Map<string, readonly BearingProposal[]>()
  known.set(state, ofState)
  const found = ofState.get(fitId) ?? proposalsOf(state, fitOf(spec, fitId))
  ofState.set(fitId, found)
  return found
}

function proposalsOf(state: BuildState, fit: Fit): readonly BearingProposal[] {
  const { tray } = bearingsIn(state, fit.id)
  const cases = fit.positions.map((position) => bearingAt(state, fit, position))
  return tray === null
    ? cases.map((bearing) => shellGone(bearing) ?? proposalAt(bearing))
    : fromTray(fit, tray, cases)
}

/** A bearing pinned to a shell of a tray that does not count any more; null for any other. */
function shellGone({ position, pins }: BearingCase): BearingProposal | null {
  const gone = [pins?.upper, pins?.lower].flatMap((pin) => (pin && 'label' in pin ? [pin.label] : []))[0]
  return gone === undefined ? null : none(position, problem('tray-line-unknown', { position, label: gone }))
}

/** What one bearing asks for by itself, whatever lies in the tray. */
export function proposalAt(bearing: BearingCase): BearingProposal {
  const { position, basis, pins } = bearing
  if (basis === 'undecided') return none(position, undecidedProblem(bearing))
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
  if (chosen === null) return none(bearing.position, problem('pinned-outside', { place: bearing.position }))
  const byItself = bearing.basis === 'readings' ? ('readings' as const) : ('bands' as const)
  const half = (at: 'upper' | 'lower'): ProposedHalf => {
    if (pins[at] !== null) return { grade: chosen[at], by: 'person', reason: pins.reason }
    const reason = 'Nearest to the target of the allowed pairs with the half that is pinned.'
    return chosen[at] === free[at]?.grade ? free[at] : { grade: chosen[at], by: byItself, reason }
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
  return asFree ?? nearestToTarget(fit, inside) ?? nearestToTarget(fit, candidates) ?? candidates[0] ?? null
}

function fromTray(fit: Fit, tray: NotedTray, cases: readonly BearingCase[]): readonly BearingProposal[] {
  const assignment = assignmentOf(fit, tray, cases)
  if (!assignment.ok) return cases.map(({ position }) => none(position, assignment.problem))
  const { filled, unfilled } = assignment.value
  return cases.map((bearing) => {
    const { position, pins, sizes } = bearing
    if (!sizes.ok) return none(position, sizes.problem)
    const found = filled.find((each) => each.position === position)
    if (found === undefined)
      return none(
        position,
        unfilled.find((each) => each.position === position)?.problem ??
          problem('tray-too-small', { place: position }),
      )
    const half = (at: 'upper' | 'lower'): ProposedHalf => {
      const { grade, label } = found[at]
      const where = label === null ? 'Not in the tray: to be ordered.' : `In the tray: ${label}.`
      const pinned = pins !== null && pins[at] !== null
      return pinned
        ? { grade, by: 'person', reason: pins.reason, label }
        : {
            grade,
            by: 'tray',
            reason: `${where} Over all bearings at once this comes nearest to the target.`,
            label,
          }
    }
    const { bore, journal } = sizes.value
    const clearance = oilClearance(bore, journal, found.upper.wall, found.lower.wall)
    return {
      position,
      upper: half('upper'),
      lower: half('lower'),
      clearance,
      within: againstLimits(clearance, fit.clearance),
      problem: null,
    }
  })
}

/** The tray against all bearings of the fit whose sizes are known. */
function assignmentOf(fit: Fit, tray: NotedTray, cases: readonly BearingCase[]): Outcome<Assignment> {
  const open = cases.flatMap((bearing): readonly OpenBearing[] => {
    const { position, sizes, undersize, pins, uncertainty } = bearing
    if (!sizes.ok) return []
    // A bore that may be off by the uncertainty either way draws the limits in by it.
    const { least, most } = sizes.value.bore
    const bore: Range =
      bearing.basis === 'readings'
        ? { least: difference(least, uncertainty), most: sum(most, uncertainty) }
        : sizes.value.bore
    const pinned = { upper: pins?.upper ?? null, lower: pins?.lower ?? null }
    return [{ position, sizes: { ...sizes.value, bore }, undersize, pinned }]
  })
  return open.length === 0
    ? done({ filled: [], unfilled: [], squaredDeviation: 0, proved: true })
    : assignFromTray(fit, trayOf(tray), open)
}

/** The tray as it is given to the search. */
export function trayOf({ halves, lines }: NotedTray): Tray {
  return {
    halves,
    lines: lines.map((line) => ({
      ...line,
      wall: line.wall === null ? null : nanometres(line.wall.length_nm),
    })),
  }
}

function none(position: string, why: Problem): BearingProposal {
  return { position, upper: null, lower: null, clearance: null, within: null, problem: why }
}
