import { done, refused, type Outcome } from '../../problem/index.ts'
import { readReason } from '../../tightening/index.ts'
import type { BuildCommand } from '../commands/commands.ts'
import type { BuildEvent } from '../events/events.ts'
import type { BuildState } from '../events/state.ts'

type CommandOf<Type extends BuildCommand['type']> = Extract<BuildCommand, { type: Type }>
type Events = Outcome<readonly BuildEvent[]>

/** Only a finished build is amended: before that, what is wrong is taken back where it was done. */
export function amendBuild(state: BuildState, command: CommandOf<'amend-build'>): Events {
  if (!state.finished) return refused('build-not-finished', {})
  const text = readReason(command.text, { what: 'addition' })
  if (!text.ok) return text
  const reason = readReason(command.reason, { what: 'added-late' })
  if (!reason.ok) return reason
  return done([{ type: 'build-amended', version: 1, text: text.value, reason: reason.value }])
}

export function voidBuild(command: CommandOf<'void-build'>): Events {
  const reason = readReason(command.reason, { what: 'build-voided' })
  return reason.ok ? done([{ type: 'build-voided', version: 1, reason: reason.value }]) : reason
}
