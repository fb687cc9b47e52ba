import { stepsUsedBy, type EngineSpec, type Step } from '../../engine/index.ts'
import { isSameValue } from '../decisions/same-value.ts'
import { untouched } from '../events/bearing-record.ts'
import { bearingsIn, type BuildState } from '../events/state.ts'
import { hasWork, topFirst } from '../plan/again.ts'
import { standingOn } from '../plan/standing-on.ts'
import { isSkipped, isStepDone } from '../steps/steps.ts'
import { groundsOf } from './grounds.ts'
import type { SpecRevision } from './spec-revision.ts'

/** The steps of which the two revisions say something else, of the one or the other: new steps and dropped ones too. */
export function changedSteps(from: SpecRevision, to: SpecRevision): ReadonlySet<string> {
  const ids = new Set([...from.spec.steps, ...to.spec.steps].map(({ id }) => id))
  return new Set(
    [...ids].filter((id) => !isSameValue(groundsOf(from.document, id), groundsOf(to.document, id))),
  )
}

/**
 * The steps of the build's own revision that are open again once it goes on by another one, the last on top first: those with
 * anything recorded of which the two say something else, and all with anything recorded that stand on such a step by the one plan or
 * the other. A step that the newer plan puts on one which is not done yet is opened like one that changed.
 */
export function openedByRevision(from: SpecRevision, to: SpecRevision, state: BuildState): readonly Step[] {
  const changed = changedSteps(from, to)
  const under = underSteps(from.spec, to.spec)
  const isUndone = (id: string) => {
    const step = from.spec.steps.find((each) => each.id === id)
    return step !== undefined && !isStepDone(from.spec, state, step)
  }
  const restedOn = (id: string, step: Step) =>
    from.spec.steps.some((each) => each.id === id && standingOn(from.spec, each).includes(step))
  return topFirst(
    from.spec,
    from.spec.steps.filter((step) => {
      if (!hasRecord(from.spec, state, step)) return false
      const below = [...allUnder(under, step.id)]
      return (
        changed.has(step.id) || below.some((id) => changed.has(id) || (isUndone(id) && !restedOn(id, step)))
      )
    }),
  )
}

/** Whether the record says anything of the step that would be taken over with it. */
function hasRecord(spec: EngineSpec, state: BuildState, step: Step): boolean {
  if (hasWork(spec, state, step) || isSkipped(state, step)) return true
  if (Object.values(state.parts.ticks).some((ticks) => ticks.some((tick) => tick.step === step.id)))
    return true
  switch (step.kind) {
    case 'note-marks':
      return (state.marks[step.fit]?.[step.part] ?? null) !== null
    case 'choose-shells':
      return !isSameValue(bearingsIn(state, step.fit), untouched)
    case 'run-procedure':
      return state.runs[step.procedure] !== undefined
    default:
      return false
  }
}

type StepsUnder = ReadonlyMap<string, ReadonlySet<string>>

/** By step: those that it comes after or works with, by either plan. */
function underSteps(...specs: readonly EngineSpec[]): StepsUnder {
  const under = new Map<string, Set<string>>()
  for (const spec of specs)
    for (const step of spec.steps) {
      const ids = under.get(step.id) ?? new Set()
      for (const id of [...step.after, ...stepsUsedBy(spec, step).map((used) => used.id)]) ids.add(id)
      under.set(step.id, ids)
    }
  return under
}

function allUnder(under: StepsUnder, id: string): ReadonlySet<string> {
  const found = new Set(under.get(id))
  // A set visits what is added while it is walked.
  for (const each of found) for (const next of under.get(each) ?? []) found.add(next)
  return found
}
