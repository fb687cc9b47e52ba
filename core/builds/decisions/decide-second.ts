import { done, refused, type Outcome } from '../../problem/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { readReason } from '../../tightening/index.ts'
import type { BuildCommand } from '../commands/commands.ts'
import type { BuildEvent } from '../events/events.ts'
import { readPerson } from '../commands/start.ts'
import type { BuildState } from '../events/state.ts'
import { awaitsSecondPerson } from '../steps/steps.ts'

type SecondCommand = Extract<BuildCommand, { type: 'confirm-step' | 'send-back-step' }>

/**
 * What a second person says of a step. Refuses `step-unknown`, `step-not-awaiting` where nobody else is wanted (yet, or
 * any more), `reason-missing` where it is sent back without one, and what `readPerson` does.
 */
export function decideSecond(
  spec: EngineSpec,
  state: BuildState,
  command: SecondCommand,
): Outcome<readonly BuildEvent[]> {
  const step = spec.steps.find(({ id }) => id === command.step)
  if (step === undefined) return refused('step-unknown', { step: command.step })
  if (!awaitsSecondPerson(spec, state, step)) return refused('step-not-awaiting', { step: step.name })
  const second = readPerson(command.second)
  if (!second.ok) return second
  const decision = {
    version: 1,
    step: step.id,
    procedure: step.kind === 'run-procedure' ? step.procedure : null,
    second: second.value,
  } as const
  if (command.type === 'confirm-step') return done([{ type: 'step-confirmed', ...decision }])
  const reason = readReason(command.reason, { what: 'step-sent-back', step: step.name })
  return reason.ok ? done([{ type: 'step-sent-back', ...decision, reason: reason.value }]) : reason
}
