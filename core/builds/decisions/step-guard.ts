import { done, refused, type Outcome } from '../../problem/index.ts'
import { halfName, type EngineSpec, type Step, type StepKind } from '../../engine/index.ts'
import type { BuildState } from '../events/state.ts'
import {
  awaitsSecondPerson,
  firstFitted,
  fitOf,
  isCarriedOut,
  isSkipped,
  isStepDone,
  stepsAfter,
  stepsBefore,
} from '../steps/steps.ts'
import { stepRules, type Access, type StepCommand } from '../commands/step-rules.ts'

/**
 * The step that a command belongs to, if the command may be given now by its rule in `stepRules`.
 *
 * Refuses `step-unknown`, also where the step is of another kind, and `procedure-unknown`; `step-skipped`; `step-before` while a step
 * before it is not done, and `step-unconfirmed` while one waits for a second person; `step-on-top` while a later step is
 * in place on what would be undone: what was tightened over a shell cannot stay tightened when the shell comes out; and
 * `shell-in-place` where the shells must be out.
 */
export function stepFor(spec: EngineSpec, state: BuildState, command: StepCommand): Outcome<Step> {
  const step = stepNamed(spec, command)
  if (!step.ok) return step
  const allowed = allow(spec, state, step.value, accessOf(state, command))
  if (!allowed.ok) return allowed
  const rule = stepRules[command.type]
  const isReadAgain = state.plan.marksAgain.has(step.value.id)
  return 'shellsOut' in rule && 'fit' in step.value && !isReadAgain
    ? withShellsOut(spec, state, step.value)
    : step
}

/** Whether work on the step may begin: refuses `step-before` and `step-unconfirmed`. */
export function mayWorkOn(spec: EngineSpec, state: BuildState, step: Step): Outcome<Step> {
  return allow(spec, state, step, 'work')
}

function stepNamed({ steps }: EngineSpec, command: StepCommand): Outcome<Step> {
  const kind: StepKind | 'any' | readonly StepKind[] = stepRules[command.type].kind
  const isOfKind = (step: Step) =>
    kind === 'any' || (typeof kind === 'string' ? step.kind === kind : kind.includes(step.kind))
  if ('procedure' in command) {
    const { procedure } = command
    const step = steps.find((each) => each.kind === 'run-procedure' && each.procedure === procedure)
    return step === undefined ? refused('procedure-unknown', { procedure }) : done(step)
  }
  const step = steps.find((each) => each.id === command.step && isOfKind(each))
  return step === undefined ? refused('step-unknown', { step: command.step }) : done(step)
}

function accessOf(state: BuildState, command: StepCommand): Access {
  // To call a check that was answered before not good is always possible.
  const withdraws =
    command.type === 'answer-check' && !command.good && state.checks[command.step] !== undefined
  return withdraws ? 'any-time' : stepRules[command.type].access
}

function allow(spec: EngineSpec, state: BuildState, step: Step, access: Access): Outcome<Step> {
  if (access === 'any-time') return done(step)
  if (access === 'undo') {
    const top = stepsAfter(spec, step).findLast((each) => isCarriedOut(spec, state, each))
    return top === undefined
      ? done(step)
      : refused('step-on-top', { step: step.name, top: top.name, kind: top.kind })
  }
  if (isSkipped(state, step)) return refused('step-skipped', { step: step.name })
  const first = stepsBefore(spec, step).find((each) => !isStepDone(spec, state, each))
  if (first === undefined) return done(step)
  return awaitsSecondPerson(spec, state, first)
    ? refused('step-unconfirmed', { step: first.name })
    : refused('step-before', { step: step.name, first: first.name })
}

function withShellsOut(
  spec: EngineSpec,
  state: BuildState,
  step: Extract<Step, { fit: string }>,
): Outcome<Step> {
  const fit = fitOf(spec, step.fit)
  const fitted = firstFitted(state, fit)
  if (fitted === null) return done(step)
  const [position, half] = fitted
  return refused('shell-in-place', { position, half: halfName(fit, half) })
}
