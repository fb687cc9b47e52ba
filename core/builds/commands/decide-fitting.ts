import { done, refused, type Outcome } from '../../problem/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { readReason } from '../../tightening/index.ts'
import type { BuildCommand } from './commands.ts'
import type { BuildEvent } from '../events/events.ts'
import { stepToUndo, stepToWorkOn } from './order-of-steps.ts'
import { halfKey, type BuildState } from '../events/state.ts'
import { fitOf } from '../steps/steps.ts'

type CommandOf<Type extends BuildCommand['type']> = Extract<BuildCommand, { type: Type }>
type Events = Outcome<readonly BuildEvent[]>

const version = 1

export function fitHalf(spec: EngineSpec, state: BuildState, command: CommandOf<'fit-half'>): Events {
  const step = stepToWorkOn(spec, state, command.step, 'fit-shells')
  if (!step.ok) return step
  const { position, half } = command
  const fit = fitOf(spec, step.value.fit)
  if (!fit.positions.includes(position)) return refused('position-not-in-fit', { position, fit: fit.name })
  const chosen = state.shells[fit.id]?.some((choice) => choice.position === position && choice.half === half)
  if (chosen !== true) return refused('shell-not-chosen', { position, half })
  if (state.fitted.has(halfKey(position, half))) return refused('half-in-place', { position, half })
  return done([{ type: 'half-fitted', version, step: command.step, position, half }])
}

export function takeOutHalf(
  spec: EngineSpec,
  state: BuildState,
  command: CommandOf<'take-out-half'>,
): Events {
  const step = stepToUndo(spec, state, command.step, 'fit-shells')
  if (!step.ok) return step
  const { position, half } = command
  const fit = fitOf(spec, step.value.fit)
  if (!fit.positions.includes(position)) return refused('position-not-in-fit', { position, fit: fit.name })
  if (!state.fitted.has(halfKey(position, half))) return refused('half-not-in-place', { position, half })
  const reason = readReason(command.reason, `why the ${half} half of ${position} comes out`)
  if (!reason.ok) return reason
  return done([{ type: 'half-taken-out', version, step: command.step, position, half, reason: reason.value }])
}

export function fitPart(spec: EngineSpec, state: BuildState, command: CommandOf<'fit-part'>): Events {
  const step = stepToWorkOn(spec, state, command.step, 'fit-part')
  if (!step.ok) return step
  if (state.partsFitted.has(step.value.id)) return refused('step-done-already', { step: step.value.name })
  return done([{ type: 'part-fitted', version, step: step.value.id }])
}

export function takeOutPart(
  spec: EngineSpec,
  state: BuildState,
  command: CommandOf<'take-out-part'>,
): Events {
  const step = stepToUndo(spec, state, command.step, 'fit-part')
  if (!step.ok) return step
  if (!state.partsFitted.has(step.value.id)) return refused('step-not-done', { step: step.value.name })
  const reason = readReason(command.reason, `why “${step.value.name}” is undone`)
  if (!reason.ok) return reason
  return done([{ type: 'part-taken-out', version, step: step.value.id, reason: reason.value }])
}

export function layBead(spec: EngineSpec, state: BuildState, command: CommandOf<'lay-bead'>): Events {
  const step = stepToWorkOn(spec, state, command.step, 'lay-bead')
  if (!step.ok) return step
  const { id, name, bead } = step.value
  if (state.beads[bead] !== undefined) return refused('step-done-already', { step: name })
  return done([{ type: 'bead-laid', version, step: id, bead }])
}

/**
 * For sealant that has skinned over, or went where it must not: the joint is wiped and the bead laid again.
 */
export function wipeOffBead(
  spec: EngineSpec,
  state: BuildState,
  command: CommandOf<'wipe-off-bead'>,
): Events {
  const step = stepToUndo(spec, state, command.step, 'lay-bead')
  if (!step.ok) return step
  const { id, name, bead } = step.value
  if (state.beads[bead] === undefined) return refused('step-not-done', { step: name })
  const reason = readReason(command.reason, 'why the bead is wiped off')
  return reason.ok
    ? done([{ type: 'bead-wiped-off', version, step: id, bead, reason: reason.value }])
    : reason
}
