import type { EngineSpec, Step } from '../../engine/index.ts'
import type { ReopenedWork } from '../events/plan-events.ts'
import { halfKey, type BuildState } from '../events/state.ts'
import { askedPlaces } from '../limits/asked-places.ts'
import { placeRounds } from '../placed/placed-places.ts'
import { fitOf, halvesOf, isCarriedOut, isSkipped, isWorkDone } from '../steps/steps.ts'
import { standingOn } from './standing-on.ts'

/** What has to be undone at the bench before a step is done again, by the kind of what was done. */
export type BenchDeed = 'loosen' | 'take-out-part' | 'clean-off-bead' | 'take-out-shells' | 'take-off-rings'

/**
 * The other steps that are open again when one is done again, the last on top first: those that stand on it and have
 * anything recorded, a reason why they were skipped too.
 */
export function openedAgain(spec: EngineSpec, state: BuildState, step: Step): readonly Step[] {
  return topFirst(
    spec,
    standingOn(spec, step).filter((each) => hasWork(spec, state, each) || isSkipped(state, each)),
  )
}

/** What has to be undone at the bench, in this order, before the first of these steps can be done again; empty for nothing. */
export function undoneAtBench(
  spec: EngineSpec,
  state: BuildState,
  step: Step,
  opened: readonly Step[],
): readonly { readonly step: Step; readonly deed: BenchDeed }[] {
  return undoneBefore(spec, state, [...opened, step])
}

/** What has to be undone at the bench before these steps are open, in their order. */
export function undoneBefore(
  spec: EngineSpec,
  state: BuildState,
  steps: readonly Step[],
): readonly { readonly step: Step; readonly deed: BenchDeed }[] {
  return steps.flatMap((each) => {
    const deed = isCarriedOut(spec, state, each) ? deeds[each.kind] : undefined
    return deed === undefined ? [] : [{ step: each, deed }]
  })
}

const deeds: { readonly [Kind in Step['kind']]?: BenchDeed } = {
  'run-procedure': 'loosen',
  'fit-part': 'take-out-part',
  'fit-places': 'take-out-part',
  'lay-bead': 'clean-off-bead',
  'fit-shells': 'take-out-shells',
  'fit-rings': 'take-off-rings',
}

/** Whether anything is recorded of the step's work, done or half done. */
export function hasWork(spec: EngineSpec, state: BuildState, step: Step): boolean {
  if (isWorkDone(spec, state, step) || isCarriedOut(spec, state, step)) return true
  switch (step.kind) {
    case 'measure-limits':
    case 'measure-rings':
      return askedPlaces(spec, state, step).some(({ measured }) => measured !== null)
    case 'clean':
    case 'note':
      return placeRounds(state, step).some(({ done }) => done !== null)
    case 'check':
      return state.checks[step.id] !== undefined
    default:
      return false
  }
}

/** What no longer stands of a step when it is opened again. */
export function workOf(spec: EngineSpec, state: BuildState, step: Step): ReopenedWork {
  switch (step.kind) {
    case 'note-marks':
      return { kind: 'marks' }
    case 'choose-shells':
      return { kind: 'shells', fit: step.fit }
    case 'fit-shells':
      return {
        kind: 'halves',
        halves: halvesOf(fitOf(spec, step.fit)).flatMap(([position, half]) =>
          state.fitted.has(halfKey(position, half)) ? [{ position, half }] : [],
        ),
      }
    case 'lay-bead':
      return { kind: 'bead', bead: step.bead }
    default:
      return { kind: 'own' }
  }
}

/** So that none of the steps stands on one before it in the list. */
export function topFirst(spec: EngineSpec, steps: readonly Step[]): readonly Step[] {
  const sorted: Step[] = []
  for (let left = steps; left.length > 0;) {
    const top = left.findLast((step) => !left.some((other) => standingOn(spec, step).includes(other)))
    // Only in a ring, which no build is started with.
    const next = top ?? left.at(-1)!
    sorted.push(next)
    left = left.filter((step) => step !== next)
  }
  return sorted
}
