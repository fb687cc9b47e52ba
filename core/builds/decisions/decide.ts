import { done, refused } from '../../problem/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import type { BenchName } from '../events/bench-events.ts'
import type { BuildState } from '../events/state.ts'
import { isStepDone } from '../steps/steps.ts'
import type { BuildCommand } from '../commands/commands.ts'
import { amendBuild, voidBuild } from './decide-afterwards.ts'
import { decideBearing } from './decide-bearing.ts'
import { builtElsewhere, decideBench } from './decide-bench.ts'
import { answerCheck } from './decide-check.ts'
import { fitHalf, fitPart, layBead, takeOutHalf, takeOutPart, wipeOffBead } from './decide-fitting.ts'
import { decideInRun } from './decide-in-run.ts'
import { acceptMeasured, measureLimit, replaceMeasured } from './decide-limits.ts'
import { fitRings, takeOffRings } from './decide-rings.ts'
import { doPlace, undoPlace } from './decide-placed.ts'
import { addPhoto, skipPhoto, withdrawPhoto, writeNote } from './decide-photos.ts'
import { redoStep, skipStep, takeBackSkip } from './decide-plan.ts'
import { countParts, leaveOver, removeTicks, tickParts } from './decide-parts.ts'
import { decideSecond } from './decide-second.ts'
import { chooseShells, noteMarks } from './decide-shells.ts'
import { acceptTurning, turnCrank, voidTurning } from './decide-turning.ts'
import { stepFor } from './step-guard.ts'
import {
  isStepCommand,
  type BuildAtStep,
  type CommandOf,
  type Events,
  type KindOf,
  type StepCommand,
  type StepCommandType,
} from '../commands/step-rules.ts'

/**
 * What follows from a command to a build: the events to record, or a problem that says why there are none.
 * Pure: the same state, command and time always give the same answer. Throws on a build without its first entry.
 *
 * @param now UTC, ISO 8601: when the events would be recorded. Null where that decides nothing: over the open time of a
 * sealant no reason is then asked for.
 * @param here The bench that asks; another one that has the build is named in the refusal. Null where benches are not told apart.
 */
export function decide(
  spec: EngineSpec,
  state: BuildState,
  command: BuildCommand,
  now: string | null,
  here: BenchName | null = null,
): Events {
  if (state.started === null) throw new Error('nothing can be decided on a build that was not started')
  if (state.voided) return refused('build-voided', { name: state.started.name })
  if (command.type === 'hand-over' || command.type === 'take-over' || command.type === 'settle-fork')
    return decideBench(state, command, here)
  const elsewhere = builtElsewhere(state, here)
  if (elsewhere !== null) return { ok: false, problem: elsewhere }
  if (command.type === 'void-build') return voidBuild(command)
  if (command.type === 'amend-build') return amendBuild(state, command)
  if (command.type === 'add-photo') return addPhoto(spec, state, command)
  if (command.type === 'withdraw-photo') return withdrawPhoto(state, command)
  if (state.finished) return refused('build-finished', { name: state.started.name })
  if (isStepCommand(command)) return decideInStep({ spec, state, now }, command)
  switch (command.type) {
    case 'confirm-step':
    case 'send-back-step':
      return decideSecond(spec, state, command)
    case 'finish-build': {
      const left = spec.steps.find((step) => !isStepDone(spec, state, step))
      return left === undefined
        ? done([{ type: 'build-finished', version: 1 }])
        : refused('steps-left', { first: left.name })
    }
    default:
      return command satisfies never
  }
}

type Handler<Type extends StepCommandType> = (
  at: BuildAtStep<KindOf<Type>>,
  command: CommandOf<Type>,
) => Events

const handlers: { readonly [Type in StepCommandType]: Handler<Type> } = {
  'note-marks': noteMarks,
  'choose-shells': chooseShells,
  'note-readings': decideBearing,
  'withdraw-readings': decideBearing,
  'declare-undersize': decideBearing,
  'decide-basis': decideBearing,
  'pin-shells': decideBearing,
  'release-shells': decideBearing,
  'note-tray': decideBearing,
  'read-thread': decideBearing,
  'fit-half': fitHalf,
  'take-out-half': takeOutHalf,
  'fit-part': fitPart,
  'take-out-part': takeOutPart,
  'lay-bead': layBead,
  'wipe-off-bead': wipeOffBead,
  'answer-check': answerCheck,
  'tick-parts': tickParts,
  'remove-ticks': removeTicks,
  'leave-over': leaveOver,
  'count-parts': countParts,
  'do-place': doPlace,
  'undo-place': undoPlace,
  'skip-photo': skipPhoto,
  'redo-step': redoStep,
  'skip-step': skipStep,
  'take-back-skip': takeBackSkip,
  'write-note': writeNote,
  'fit-rings': fitRings,
  'take-off-rings': takeOffRings,
  'turn-crank': turnCrank,
  'accept-turning': acceptTurning,
  'void-turning': voidTurning,
  'measure-limit': measureLimit,
  'accept-measured': acceptMeasured,
  'replace-measured': replaceMeasured,
  'start-run': decideInRun,
  'declare-new': decideInRun,
  pull: decideInRun,
  'take-back': decideInRun,
  'read-again': decideInRun,
  'note-problem': decideInRun,
  'answer-flag': decideInRun,
  'loosen-fastener': decideInRun,
  'replace-fastener': decideInRun,
  'restart-run': decideInRun,
  'pause-run': decideInRun,
  'resume-run': decideInRun,
}

function decideInStep(build: Omit<BuildAtStep<never>, 'step'>, command: StepCommand): Events {
  const step = stepFor(build.spec, build.state, command)
  if (!step.ok) return step
  // `stepFor` gives a step of the kind that the command's rule names, which the compiler cannot follow.
  const handler = handlers[command.type] as (at: object, command: StepCommand) => Events
  return handler({ ...build, step: step.value }, command)
}
