import type { EngineSpec, Fit, Step } from '../../engine/index.ts'
import { done, problem, refused, type Problem } from '../../problem/index.ts'
import { readReason } from '../../tightening/index.ts'
import { isSameValue } from '../decisions/same-value.ts'
import type { Events } from '../commands/step-rules.ts'
import { reopenedEvents } from '../decisions/decide-plan.ts'
import { hasFault } from '../commands/start.ts'
import type { RevisionEvent } from '../events/revision-events.ts'
import type { BuildState } from '../events/state.ts'
import { hasWork, undoneBefore, type BenchDeed } from '../plan/again.ts'
import { isWorkDone } from '../steps/steps.ts'
import { changedSteps, openedByRevision } from './opened-by-revision.ts'
import type { SpecRevision } from './spec-revision.ts'

/** What a person says when a build is to go on by another revision. */
export interface TakingRevision {
  readonly reason: string
  /** The steps that are open again with it, as they were shown. */
  readonly opens: readonly string[]
  /** What had to be was taken apart at the bench. */
  readonly takenApart?: true | undefined
}

/** What follows for a build that goes on by another revision. */
export interface RevisionEffects {
  /** The steps that are open again, the last on top first. */
  readonly opened: readonly Step[]
  /** What has to be undone at the bench before, in this order. */
  readonly undo: readonly { readonly step: Step; readonly deed: BenchDeed }[]
  /** What was said in terms that the newer one has no more. */
  readonly dropped: RevisionEvent['dropped']
  /** Why not now; null where it may be. */
  readonly against: Problem | null
}

/**
 * What it means to take over a revision now. Safe is: nothing is half done, no run among it, so that whatever was begun by a
 * revision is also ended by it. `against` is `build-voided`, `build-finished`, `revision-of-another`, `revision-same`, `engine-faulty`,
 * `revision-step-begun`.
 */
export function effectsOfRevision(from: SpecRevision, to: SpecRevision, state: BuildState): RevisionEffects {
  const opened = openedByRevision(from, to, state)
  return {
    opened,
    undo: undoneBefore(from.spec, state, opened),
    dropped: droppedBy(from, to, state, opened),
    against: against(from, to, state),
  }
}

function against(from: SpecRevision, to: SpecRevision, state: BuildState): Problem | null {
  const { name } = state.started ?? { name: '' }
  if (state.voided) return problem('build-voided', { name })
  if (state.finished) return problem('build-finished', { name })
  if (from.spec.id !== to.spec.id) return problem('revision-of-another', { engine: to.spec.name })
  if (from.sha256 === to.sha256) return problem('revision-same', {})
  if (hasFault(to.spec)) return problem('engine-faulty', { engine: to.spec.name })
  const begun = from.spec.steps.find((step) => isHalfDone(from.spec, state, step))
  return begun === undefined ? null : problem('revision-step-begun', { step: begun.name })
}

function isHalfDone(spec: EngineSpec, state: BuildState, step: Step): boolean {
  return hasWork(spec, state, step) && !isWorkDone(spec, state, step)
}

/**
 * The entries by which a build goes on by another revision: that it does, and for each step that is open again what redoing it
 * would record. Refuses what `effectsOfRevision` has against it, `reason-missing`, `revision-opens-others`, `revision-not-taken-apart`.
 */
export function takeRevision(
  from: SpecRevision,
  to: SpecRevision,
  state: BuildState,
  { reason: typed, opens, takenApart }: TakingRevision,
): Events {
  const { opened, undo, dropped, against: why } = effectsOfRevision(from, to, state)
  if (why !== null) return { ok: false, problem: why }
  const reason = readReason(typed, { what: 'revision-taken-over' })
  if (!reason.ok) return reason
  if (opens.length !== opened.length || opened.some(({ id }) => !opens.includes(id)))
    return refused('revision-opens-others', { others: opened.map(({ name }) => name) })
  const [first] = undo
  if (first !== undefined && takenApart !== true)
    return refused('revision-not-taken-apart', { first: first.step.name })
  return done([
    {
      type: 'revision-taken-over',
      version: 1,
      spec: to.spec.id,
      specRevision: to.spec.revision,
      specSha256: to.sha256,
      reason: reason.value,
      opens: opened.map(({ id }) => id),
      ...(takenApart === true && { takenApart: true as const }),
      dropped,
    },
    ...opened.flatMap((step) => reopenedEvents(from.spec, state, step, reason.value)),
  ])
}

/** What was said in terms that the newer revision has no more: it would be read wrongly. */
function droppedBy(
  from: SpecRevision,
  to: SpecRevision,
  state: BuildState,
  opened: readonly Step[],
): RevisionEvent['dropped'] {
  const changed = changedSteps(from, to)
  const others = opened.filter(({ id }) => changed.has(id))
  const fitIn = ({ fits }: EngineSpec, id: string) => fits.find((fit) => fit.id === id)
  return {
    marks: others.flatMap((step) => (step.kind === 'note-marks' ? [{ fit: step.fit, part: step.part }] : [])),
    readings: others.flatMap((step) =>
      step.kind === 'choose-shells' &&
      state.bearings[step.fit] !== undefined &&
      !isSameValue(terms(fitIn(from.spec, step.fit)), terms(fitIn(to.spec, step.fit)))
        ? [step.fit]
        : [],
    ),
    ownOrders: others.flatMap((step) =>
      step.kind === 'run-procedure' && (state.runs[step.procedure]?.ownOrder ?? null) !== null
        ? [step.procedure]
        : [],
    ),
  }
}

/** What readings, pins and the tray of a fit are said in. */
function terms(fit: Fit | undefined): unknown {
  if (fit === undefined) return null
  const { kind, split, positions, measuring, undersizes, grades } = fit
  // What an undersize is called in another language changes nothing that was said.
  const sizes = undersizes.map(({ name, ...each }) => ({ ...each, name: name.key }))
  return [kind, split, positions, measuring ?? null, sizes, grades.map(({ grade }) => grade)]
}
