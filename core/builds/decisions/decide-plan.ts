import { done, refused, type Outcome } from '../../problem/index.ts'
import type { EngineSpec, Step, StepKind } from '../../engine/index.ts'
import { decideRun, readReason } from '../../tightening/index.ts'
import type { BuildEvent } from '../events/events.ts'
import type { BuildState } from '../events/state.ts'
import { hasWork, openedAgain, undoneAtBench, workOf } from '../plan/again.ts'
import { standingOn } from '../plan/standing-on.ts'
import { isSkipped, isWorkDone } from '../steps/steps.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

const version = 1

type AnyStep = BuildAtStep<StepKind>

/** What was read or answered is not taken back: it is read or answered again, and the last counts. */
const isRead = ({ kind }: Step) => kind === 'check' || kind === 'measure-limits' || kind === 'measure-rings'

/** What a person says they saw before a step is done again. */
interface SeenBeforeRedo {
  readonly opens: readonly string[]
  readonly takenApart?: true | undefined
}

/**
 * A finished step, or one that was skipped, is done again: it and what stands on it are open again. Marks are only read
 * again: what stands on them is open once they read otherwise, see `openedByMarks`.
 *
 * Refuses `redo-not-done`, `reason-missing`, `redo-opens-others`, `redo-not-taken-apart`.
 */
export function redoStep({ spec, state, step }: AnyStep, command: CommandOf<'redo-step'>): Events {
  if (!isWorkDone(spec, state, step) && !isSkipped(state, step))
    return refused('redo-not-done', { step: step.name, isRead: isRead(step) })
  const reason = readReason(command.reason, { what: 'step-redone', step: step.name })
  if (!reason.ok) return reason
  const opened = step.kind === 'note-marks' ? [] : openedAgain(spec, state, step)
  const seen = checkSeen(spec, state, step, opened, command)
  if (!seen.ok) return seen
  const again = { step, reason: reason.value }
  return done([
    {
      ...reopenedStep(spec, state, step, again),
      opens: opened.map(({ id }) => id),
      ...(command.takenApart === true && { takenApart: true as const }),
    },
    ...opened.flatMap((each) => [
      ...loosenedRun(spec, state, each, again.reason),
      reopenedStep(spec, state, each, again),
    ]),
    ...loosenedRun(spec, state, step, again.reason),
  ])
}

/**
 * What is open again because marks that were read again read otherwise; empty where shells were not even chosen, or nothing
 * but their choice stands on the marks, which falls away by itself.
 */
export function openedByMarks(spec: EngineSpec, state: BuildState, step: Step, seen: SeenBeforeRedo): Events {
  const opened = openedAgain(spec, state, step)
  if (opened.every(({ kind }) => kind === 'choose-shells')) return done([])
  const checked = checkSeen(spec, state, step, opened, seen)
  if (!checked.ok) return checked
  const { reason } = state.plan.reopened[step.id] ?? { reason: step.name }
  return done(
    opened.flatMap((each) => [
      ...loosenedRun(spec, state, each, reason),
      reopenedStep(spec, state, each, { step, reason }),
    ]),
  )
}

/** Whether a person saw what is open again, and undid at the bench what has to be undone. */
function checkSeen(
  spec: EngineSpec,
  state: BuildState,
  step: Step,
  opened: readonly Step[],
  { opens, takenApart }: SeenBeforeRedo,
): Outcome<unknown> {
  const others = opened.map(({ name }) => name)
  if (opens.length !== opened.length || opened.some(({ id }) => !opens.includes(id)))
    return refused('redo-opens-others', { step: step.name, others })
  const [first] = undoneAtBench(spec, state, step, opened)
  return first === undefined || takenApart === true
    ? done(null)
    : refused('redo-not-taken-apart', { step: step.name, first: first.step.name })
}

interface Again {
  readonly step: Step
  readonly reason: string
}

function reopenedStep(spec: EngineSpec, state: BuildState, each: Step, { step, reason }: Again) {
  const work = workOf(spec, state, each)
  return { type: 'step-reopened', version, step: each.id, redone: step.id, reason, work } as const
}

/** What opens a step again because another revision of the spec says something else of it, or of what it stands on. */
export function reopenedEvents(
  spec: EngineSpec,
  state: BuildState,
  step: Step,
  reason: string,
): readonly BuildEvent[] {
  return [
    ...loosenedRun(spec, state, step, reason),
    { ...reopenedStep(spec, state, step, { step, reason }), byRevision: true },
  ]
}

/** A run begins again with its first pass, every fastener loosened. */
function loosenedRun(spec: EngineSpec, state: BuildState, step: Step, reason: string): readonly BuildEvent[] {
  if (step.kind !== 'run-procedure') return []
  const { procedure } = step
  const again = decideRun(spec, state.runs[procedure], { type: 'restart-run', procedure, pass: 0, reason })
  return again.ok ? again.value : []
}

/** Refuses `skip-not-allowed`, `step-begun`, `step-done-already`, `reason-missing`. */
export function skipStep({ spec, state, step }: AnyStep, command: CommandOf<'skip-step'>): Events {
  if (step.mayBeSkipped === undefined) return refused('skip-not-allowed', { step: step.name })
  if (isWorkDone(spec, state, step)) return refused('step-done-already', { step: step.name })
  if (hasWork(spec, state, step)) return refused('step-begun', { step: step.name, isRead: isRead(step) })
  const reason = readReason(command.reason, { what: 'step-skipped', step: step.name })
  return reason.ok ? done([{ type: 'step-skipped', version, step: step.id, reason: reason.value }]) : reason
}

/** Refuses `step-not-skipped`; `skip-stood-on` where a step that stands on it has begun; `reason-missing`. */
export function takeBackSkip({ spec, state, step }: AnyStep, command: CommandOf<'take-back-skip'>): Events {
  if (!isSkipped(state, step)) return refused('step-not-skipped', { step: step.name })
  const top = standingOn(spec, step).findLast((each) => hasWork(spec, state, each) || isSkipped(state, each))
  if (top !== undefined) return refused('skip-stood-on', { step: step.name, top: top.name })
  const reason = readReason(command.reason, { what: 'skip-taken-back', step: step.name })
  return reason.ok
    ? done([{ type: 'skip-taken-back', version, step: step.id, reason: reason.value }])
    : reason
}
