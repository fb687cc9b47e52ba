import { refused, type Outcome } from '../../problem/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { decideRun, type RunCommand } from '../../tightening/index.ts'
import type { BuildEvent } from '../events/events.ts'
import { stepToUndo, stepToWorkOn } from './order-of-steps.ts'
import type { BuildState } from '../events/state.ts'

/**
 * A command to a run, in its place among the steps: pulling waits for the steps before it, and a pull cannot
 * be taken back from under a later step. What only says something (a problem, an answer, a pause) is always
 * heard.
 */
export function decideProcedure(
  spec: EngineSpec,
  state: BuildState,
  command: RunCommand,
): Outcome<readonly BuildEvent[]> {
  const step = spec.steps.find(
    (each) => each.kind === 'run-procedure' && each.procedure === command.procedure,
  )
  if (step === undefined) return refused('procedure-unknown', { procedure: command.procedure })
  const allowed = inPlace(spec, state, command, step.id)
  return allowed.ok ? decideRun(spec, state.runs[command.procedure], command) : allowed
}

function inPlace(spec: EngineSpec, state: BuildState, command: RunCommand, step: string): Outcome<unknown> {
  switch (command.type) {
    case 'start-run':
    case 'declare-new':
    case 'pull':
    case 'replace-fastener':
      return stepToWorkOn(spec, state, step, 'run-procedure')
    case 'take-back':
    case 'loosen-fastener':
    case 'restart-run':
      return stepToUndo(spec, state, step, 'run-procedure')
    case 'note-problem':
    case 'answer-flag':
    case 'read-again':
    case 'pause-run':
    case 'resume-run':
      return { ok: true, value: null }
    default:
      return command satisfies never
  }
}
