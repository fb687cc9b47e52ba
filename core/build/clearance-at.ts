import { againstLimits, exactly, oilClearance, wallOf, type Judged, type Range } from '../bearing/index.ts'
import { done, type Outcome } from '../problem/index.ts'
import { nanometres } from '../quantity/index.ts'
import type { Fit } from '../spec/index.ts'
import { bearingAt } from './bearing-at.ts'
import type { ShellChoice } from './events.ts'
import { bearingsIn, type BuildState } from './state.ts'

/** The clearance that the chosen shells of a bearing will leave; null while it cannot be told. */
export function clearanceAt(state: BuildState, fit: Fit, position: string): Judged | null {
  const chosen = (half: 'upper' | 'lower') =>
    state.shells[fit.id]?.find((choice) => choice.position === position && choice.half === half)
  const [upper, lower] = [chosen('upper'), chosen('lower')]
  if (upper === undefined || lower === undefined) return null
  const bearing = bearingAt(state, fit, position)
  const upperWall = wallOfChoice(state, bearing.fit, upper)
  const lowerWall = wallOfChoice(state, bearing.fit, lower)
  if (!bearing.sizes.ok || !upperWall.ok || !lowerWall.ok) return null
  const { bore, journal } = bearing.sizes.value
  const clearance = oilClearance(bore, journal, upperWall.value, lowerWall.value)
  return { clearance, within: againstLimits(clearance, fit.clearance) }
}

/** The measured wall of a shell that was taken from the tray by it; the band of the grade for any other. */
function wallOfChoice(state: BuildState, fit: Fit, { position, grade, label }: ShellChoice): Outcome<Range> {
  const line = bearingsIn(state, fit.id).tray?.lines.find((each) => each.label === label)
  const wall = line?.wall ?? null
  return wall === null ? wallOf(fit, position, grade) : done(exactly(nanometres(wall.length_nm)))
}
