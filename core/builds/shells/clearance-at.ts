import {
  againstLimits,
  exactly,
  oilClearance,
  wallOf,
  type JudgedClearance,
  type Range,
} from '../../bearing/index.ts'
import { done, type Outcome } from '../../problem/index.ts'
import { nanometres } from '../../quantity/index.ts'
import type { Fit } from '../../engine/index.ts'
import { bearingAt, type BearingCase } from './bearing-at.ts'
import type { Half, ShellChoice } from '../events/events.ts'
import { bearingsIn, type BuildState } from '../events/state.ts'

/** The shells of one bearing's halves, each with the line of the tray it is from, if it is from one. */
export type ShellsOf = Readonly<Record<Half, Pick<ShellChoice, 'grade' | 'label'>>>

/** The clearance that the chosen shells of a bearing will leave; null while it is not known. */
export function clearanceAt(state: BuildState, fit: Fit, position: string): JudgedClearance | null {
  const chosen = shellsChosen(state, fit, position)
  if (chosen === null) return null
  const bearing = bearingAt(state, fit, position)
  const walls = wallsOf(state, bearing, chosen)
  if (!bearing.sizes.ok || !walls.ok) return null
  const { bore, journal } = bearing.sizes.value
  const clearance = oilClearance(bore, journal, walls.value.upper, walls.value.lower)
  return { clearance, within: againstLimits(clearance, fit.clearance) }
}

/** Both shells of a bearing; null while they are not chosen. */
export function shellsChosen(state: BuildState, fit: Fit, position: string): ShellsOf | null {
  const chosen = (half: Half) =>
    state.shells[fit.id]?.find((choice) => choice.position === position && choice.half === half)
  const [upper, lower] = [chosen('upper'), chosen('lower')]
  return upper === undefined || lower === undefined ? null : { upper, lower }
}

/**
 * The walls of a bearing's shells: as measured for one that was taken from the tray by its wall, the band of the grade for
 * any other.
 *
 * Refuses `grade-unknown`, `wall-unknown`.
 */
export function wallsOf(
  state: BuildState,
  { fit, position }: BearingCase,
  shells: ShellsOf,
): Outcome<Readonly<Record<Half, Range>>> {
  const wall = ({ grade, label }: ShellsOf[Half]) => {
    const measured = bearingsIn(state, fit.id).tray?.lines.find((line) => line.label === label)?.wall
    return measured ? done(exactly(nanometres(measured.length_nm))) : wallOf(fit, position, grade)
  }
  const [upper, lower] = [wall(shells.upper), wall(shells.lower)]
  if (!upper.ok) return upper
  return lower.ok ? done({ upper: upper.value, lower: lower.value }) : lower
}
