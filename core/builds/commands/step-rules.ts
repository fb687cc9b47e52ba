import { placedKinds, type EngineSpec, type Step, type StepKind } from '../../engine/index.ts'
import type { Outcome } from '../../problem/index.ts'
import type { BuildEvent } from '../events/events.ts'
import type { BuildState } from '../events/state.ts'
import type { BuildCommand } from './commands.ts'

/** What a command comes to: the events to record, or why there are none. */
export type Events = Outcome<readonly BuildEvent[]>

export type CommandOf<Type extends BuildCommand['type']> = Extract<BuildCommand, { type: Type }>

/**
 * What a command needs of its step. Work waits for the steps before it; nothing is undone from under a later step that is
 * in place on it; what is only said of a step may be said at any time.
 */
export type Access = 'work' | 'undo' | 'any-time'

interface StepRule {
  /** `any` for what may be said in every kind of step. */
  readonly kind: StepKind | 'any' | readonly StepKind[]
  readonly access: Access
  /** Whether no shell of the step's fit may be in place, unless the step was opened to read its marks again. */
  readonly shellsOut?: true
}

/** The kinds of step in which readings are held against limits. */
const measuredIn = ['measure-limits', 'measure-rings'] as const

/** To which kind of step each command belongs, and what it needs of it; null for one that belongs to no kind of step. */
export const stepRules = {
  'note-marks': { kind: 'note-marks', access: 'work', shellsOut: true },
  'choose-shells': { kind: 'choose-shells', access: 'work', shellsOut: true },
  'note-readings': { kind: 'choose-shells', access: 'work', shellsOut: true },
  'withdraw-readings': { kind: 'choose-shells', access: 'work', shellsOut: true },
  'declare-undersize': { kind: 'choose-shells', access: 'work', shellsOut: true },
  'decide-basis': { kind: 'choose-shells', access: 'work', shellsOut: true },
  'pin-shells': { kind: 'choose-shells', access: 'work', shellsOut: true },
  'release-shells': { kind: 'choose-shells', access: 'work', shellsOut: true },
  'note-tray': { kind: 'choose-shells', access: 'work', shellsOut: true },
  // A plastic thread is read with the shells in and the cap tight.
  'read-thread': { kind: 'choose-shells', access: 'any-time' },
  'fit-half': { kind: 'fit-shells', access: 'work' },
  'take-out-half': { kind: 'fit-shells', access: 'undo' },
  'fit-part': { kind: 'fit-part', access: 'work' },
  'take-out-part': { kind: 'fit-part', access: 'undo' },
  'lay-bead': { kind: 'lay-bead', access: 'work' },
  'wipe-off-bead': { kind: 'lay-bead', access: 'undo' },
  'answer-check': { kind: 'check', access: 'work' },
  'tick-parts': { kind: 'any', access: 'work' },
  'remove-ticks': { kind: 'any', access: 'any-time' },
  'leave-over': { kind: 'count', access: 'work' },
  'count-parts': { kind: 'count', access: 'work' },
  'do-place': { kind: placedKinds, access: 'work' },
  'undo-place': { kind: placedKinds, access: 'undo' },
  'add-photo': null,
  'withdraw-photo': null,
  'redo-step': { kind: 'any', access: 'any-time' },
  'skip-step': { kind: 'any', access: 'work' },
  'take-back-skip': { kind: 'any', access: 'any-time' },
  'skip-photo': { kind: 'photo', access: 'work' },
  'write-note': { kind: 'any', access: 'any-time' },
  'fit-rings': { kind: 'fit-rings', access: 'work' },
  'take-off-rings': { kind: 'fit-rings', access: 'undo' },
  'measure-limit': { kind: measuredIn, access: 'work' },
  'accept-measured': { kind: measuredIn, access: 'work' },
  'replace-measured': { kind: measuredIn, access: 'work' },
  'turn-crank': { kind: 'turn', access: 'work' },
  'accept-turning': { kind: 'turn', access: 'work' },
  'void-turning': { kind: 'turn', access: 'undo' },
  'start-run': { kind: 'run-procedure', access: 'work' },
  'declare-new': { kind: 'run-procedure', access: 'work' },
  pull: { kind: 'run-procedure', access: 'work' },
  'replace-fastener': { kind: 'run-procedure', access: 'work' },
  'take-back': { kind: 'run-procedure', access: 'undo' },
  'loosen-fastener': { kind: 'run-procedure', access: 'undo' },
  'restart-run': { kind: 'run-procedure', access: 'undo' },
  'read-again': { kind: 'run-procedure', access: 'any-time' },
  'note-problem': { kind: 'run-procedure', access: 'any-time' },
  'answer-flag': { kind: 'run-procedure', access: 'any-time' },
  'pause-run': { kind: 'run-procedure', access: 'any-time' },
  'resume-run': { kind: 'run-procedure', access: 'any-time' },
  'confirm-step': null,
  'send-back-step': null,
  'finish-build': null,
  'amend-build': null,
  'void-build': null,
  'hand-over': null,
  'take-over': null,
  'settle-fork': null,
} as const satisfies { readonly [Type in BuildCommand['type']]: StepRule | null }

/** Commands that belong to one kind of step. */
export type StepCommandType = {
  [Type in BuildCommand['type']]: (typeof stepRules)[Type] extends null ? never : Type
}[BuildCommand['type']]
export type StepCommand = CommandOf<StepCommandType>

/** The kind of step that a command belongs to. */
export type KindOf<Type extends StepCommandType> = (typeof stepRules)[Type]['kind'] extends 'any'
  ? StepKind
  : (typeof stepRules)[Type]['kind'] extends readonly (infer Kind extends StepKind)[]
    ? Kind
    : Extract<(typeof stepRules)[Type]['kind'], StepKind>

/** A build at the step that a command belongs to, which may be given there now. */
export interface BuildAtStep<Kind extends StepKind> {
  readonly spec: EngineSpec
  readonly state: BuildState
  readonly step: Extract<Step, { kind: Kind }>
  /** UTC, ISO 8601: when the events would be recorded; null where that decides nothing. */
  readonly now: string | null
}

export function isStepCommand(command: BuildCommand): command is StepCommand {
  return stepRules[command.type] !== null
}
