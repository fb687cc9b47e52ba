import { clearanceWith, type Judged } from '../bearing/index.ts'
import type { Fit } from '../spec/index.ts'
import type { BuildState } from './state.ts'

/** The clearance that the chosen shells of a bearing will leave; null while it cannot be told. */
export function clearanceAt(state: BuildState, fit: Fit, position: string): Judged | null {
  const index = fit.positions.indexOf(position)
  const marks = state.marks[fit.id]
  const grade = (half: 'upper' | 'lower') =>
    state.shells[fit.id]?.find((choice) => choice.position === position && choice.half === half)?.grade
  const upper = grade('upper')
  const lower = grade('lower')
  if (upper === undefined || lower === undefined) return null
  const housing = marks?.housing?.[index] ?? null
  const journal = marks?.journal?.[index] ?? null
  const judged = clearanceWith(fit, housing, journal, upper, lower)
  return judged.ok ? judged.value : null
}
