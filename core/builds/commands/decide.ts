import { done, refused, type Outcome } from '../../problem/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import type { BuildCommand } from './commands.ts'
import { decideCheck } from './decide-check.ts'
import { amendBuild, voidBuild } from './decide-afterwards.ts'
import { chooseShells, noteMarks } from './decide-shells.ts'
import { decideBearing } from './decide-bearing.ts'
import { decideSecond } from './decide-second.ts'
import { fitHalf, fitPart, layBead, takeOutHalf, takeOutPart, wipeOffBead } from './decide-fitting.ts'
import { decideProcedure } from './decide-procedure.ts'
import type { BuildEvent } from '../events/events.ts'
import type { BuildState } from '../events/state.ts'
import { isStepDone } from '../steps/steps.ts'

/**
 * What follows from a command to a build: the events to record, or a problem that says why there are none.
 * Pure: the same state and command always give the same answer. Throws on a build without its first entry.
 */
export function decide(
  spec: EngineSpec,
  state: BuildState,
  command: BuildCommand,
): Outcome<readonly BuildEvent[]> {
  if (state.newerFrom !== null) return refused('build-newer', { entry: state.newerFrom })
  if (state.started === null) throw new Error('nothing can be decided on a build that was not started')
  if (state.voided) return refused('build-voided', { name: state.started.name })
  if (command.type === 'void-build') return voidBuild(command)
  if (command.type === 'amend-build') return amendBuild(state, command)
  if (state.finished) return refused('build-finished', { name: state.started.name })
  switch (command.type) {
    case 'note-marks':
      return noteMarks(spec, state, command)
    case 'choose-shells':
      return chooseShells(spec, state, command)
    case 'note-readings':
    case 'withdraw-readings':
    case 'declare-undersize':
    case 'decide-basis':
    case 'pin-shells':
    case 'release-shells':
    case 'note-tray':
    case 'read-thread':
      return decideBearing(spec, state, command)
    case 'fit-half':
      return fitHalf(spec, state, command)
    case 'take-out-half':
      return takeOutHalf(spec, state, command)
    case 'fit-part':
      return fitPart(spec, state, command)
    case 'take-out-part':
      return takeOutPart(spec, state, command)
    case 'lay-bead':
      return layBead(spec, state, command)
    case 'wipe-off-bead':
      return wipeOffBead(spec, state, command)
    case 'answer-check':
      return decideCheck(spec, state, command)
    case 'start-run':
    case 'declare-new':
    case 'pull':
    case 'take-back':
    case 'read-again':
    case 'note-problem':
    case 'answer-flag':
    case 'loosen-fastener':
    case 'replace-fastener':
    case 'restart-run':
    case 'pause-run':
    case 'resume-run':
      return decideProcedure(spec, state, command)
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
