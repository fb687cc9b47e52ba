import type { RevisionEvent } from './revision-events.ts'
import type { BuildState } from './state.ts'

/** The build without what the newer revision has no terms for. */
export function withRevision(state: BuildState, { dropped }: RevisionEvent): BuildState {
  const marks = { ...state.marks }
  for (const { fit, part } of dropped.marks)
    marks[fit] = { ...(marks[fit] ?? { housing: null, journal: null }), [part]: null }
  const kept = Object.entries(state.bearings).filter(([fit]) => !dropped.readings.includes(fit))
  const runs = Object.entries(state.runs).map(([id, run]) => [
    id,
    dropped.ownOrders.includes(id) ? { ...run, ownOrder: null } : run,
  ])
  return {
    ...state,
    marks,
    bearings: Object.fromEntries(kept),
    runs: Object.fromEntries(runs) as BuildState['runs'],
    workedOn: null,
  }
}
