import {
  againstLimits,
  assignFromTray,
  oilClearance,
  type ShellAssignment,
  type OpenBearing,
  type ProposalReason,
  type Range,
  type Tray,
} from '../../bearing/index.ts'
import { done, problem, type Outcome } from '../../problem/index.ts'
import { difference, nanometres, sum } from '../../quantity/index.ts'
import type { Fit } from '../../engine/index.ts'
import { provedLimits, type BearingCase } from './bearing-at.ts'
import type { NotedTray } from '../events/bearing-record.ts'
import { takeByChart } from './by-chart-from-tray.ts'
import { noShells, type BearingProposal, type ProposedHalf } from './proposal-at.ts'

/**
 * The shells of every bearing from the tray, all at once. Bearings whose clearance is not known get theirs first: they
 * have no other choice.
 */
export function fromTray(
  fit: Fit,
  tray: NotedTray,
  cases: readonly BearingCase[],
): readonly BearingProposal[] {
  const { byChart, left } = takeByChart(tray, cases)
  const assignment = assignmentOf(
    fit,
    left,
    cases.filter(({ position }) => !byChart.has(position)),
  )
  if (!assignment.ok)
    return cases.map(({ position }) => byChart.get(position) ?? noShells(position, assignment.problem))
  const { filled, unfilled, proved } = assignment.value
  return cases.map((bearing) => {
    const { position, pins, sizes } = bearing
    const charted = byChart.get(position)
    if (charted !== undefined) return charted
    if (!sizes.ok) return noShells(position, sizes.problem)
    const found = filled.find((each) => each.position === position)
    if (found === undefined)
      return noShells(
        position,
        unfilled.find((each) => each.position === position)?.problem ??
          problem('tray-too-small', { place: position }),
      )
    const half = (at: 'upper' | 'lower'): ProposedHalf => {
      const { grade, label } = found[at]
      const where: ProposalReason =
        label === null ? { code: 'not-in-tray', facts: {} } : { code: 'in-tray', facts: { label } }
      const nearest: ProposalReason = { code: proved ? 'nearest-of-all' : 'nearest-of-tried', facts: {} }
      const pinned = pins !== null && pins[at] !== null
      return pinned
        ? { grade, by: 'person', reason: pins.reason, label }
        : {
            grade,
            by: 'tray',
            reason: [where, nearest],
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
      within: againstLimits(clearance, provedLimits(bearing)),
      problem: null,
    }
  })
}

/** The tray against all bearings of the fit whose sizes are known. */
function assignmentOf(fit: Fit, tray: NotedTray, cases: readonly BearingCase[]): Outcome<ShellAssignment> {
  const open = cases.flatMap((bearing): readonly OpenBearing[] => {
    const { position, sizes, undersize, pins } = bearing
    const uncertainty = bearing.uncertainty ?? nanometres(0)
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
