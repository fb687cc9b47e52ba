import { done, refused, type Outcome } from '../../problem/index.ts'
import type { EngineSpec, Step, StepKind } from '../../engine/index.ts'
import type { BuildState } from '../events/state.ts'
import { awaitsSecondPerson, isCarriedOut, isStepDone, stepsAfter, stepsBefore } from '../steps/steps.ts'

type StepOf<Kind extends StepKind> = Extract<Step, { kind: Kind }>

/** The step that a command names. Refuses `step-unknown`, also where the step is of another kind. */
export function findStep<Kind extends StepKind>(
  spec: EngineSpec,
  id: string,
  kind: Kind,
): Outcome<StepOf<Kind>> {
  const step = spec.steps.find((each): each is StepOf<Kind> => each.id === id && each.kind === kind)
  return step === undefined ? refused('step-unknown', { step: id }) : done(step)
}

/**
 * The step that a command names, if it may be worked on. Refuses `step-unknown`, and `step-before` while one
 * before it is not done.
 */
export function stepToWorkOn<Kind extends StepKind>(
  spec: EngineSpec,
  state: BuildState,
  id: string,
  kind: Kind,
): Outcome<StepOf<Kind>> {
  const step = findStep(spec, id, kind)
  if (!step.ok) return step
  const first = stepsBefore(spec, step.value).find((each) => !isStepDone(spec, state, each))
  if (first === undefined) return step
  return awaitsSecondPerson(spec, state, first)
    ? refused('step-unconfirmed', { step: first.name })
    : refused('step-before', { step: step.value.name, first: first.name })
}

/**
 * The step that a command names, if something of it may be undone. Refuses `step-unknown`, and `step-on-top`
 * while a later step is in place on it: what was tightened over a shell cannot stay tightened when the shell
 * comes out.
 */
export function stepToUndo<Kind extends StepKind>(
  spec: EngineSpec,
  state: BuildState,
  id: string,
  kind: Kind,
): Outcome<StepOf<Kind>> {
  const step = findStep(spec, id, kind)
  if (!step.ok) return step
  const top = stepsAfter(spec, step.value).findLast((each) => isCarriedOut(spec, state, each))
  return top === undefined
    ? step
    : refused('step-on-top', { step: step.value.name, top: top.name, kind: top.kind })
}
