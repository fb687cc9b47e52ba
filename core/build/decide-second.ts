import { done, refused, type Outcome } from '../problem/index.ts'
import type { EngineSpec } from '../spec/index.ts'
import type { BuildCommand } from './commands.ts'
import type { BuildEvent } from './events.ts'
import { readPerson } from './start.ts'
import type { BuildState } from './state.ts'
import { awaitsSecondPerson } from './steps.ts'

type ConfirmStep = Extract<BuildCommand, { type: 'confirm-step' }>

/** Refuses `step-unknown`, `step-not-awaiting` where nobody else is wanted (yet, or any more), and what `readPerson` does. */
export function confirmStep(
  spec: EngineSpec,
  state: BuildState,
  command: ConfirmStep,
): Outcome<readonly BuildEvent[]> {
  const step = spec.steps.find(({ id }) => id === command.step)
  if (step === undefined) return refused('step-unknown', { step: command.step })
  if (!awaitsSecondPerson(spec, state, step)) return refused('step-not-awaiting', { step: step.name })
  const second = readPerson(command.second)
  if (!second.ok) return second
  const procedure = step.kind === 'run-procedure' ? step.procedure : null
  return done([{ type: 'step-confirmed', version: 1, step: step.id, procedure, second: second.value }])
}
