import { done, refused } from '../../problem/index.ts'
import { halfName } from '../../engine/index.ts'
import { readReason } from '../../tightening/index.ts'
import { halfKey } from '../events/state.ts'
import { fitOf } from '../steps/steps.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

const version = 1

export function fitHalf(
  { spec, state, step }: BuildAtStep<'fit-shells'>,
  command: CommandOf<'fit-half'>,
): Events {
  const { position, half } = command
  const fit = fitOf(spec, step.fit)
  if (!fit.positions.includes(position)) return refused('position-not-in-fit', { position, fit: fit.name })
  const named = { position, half: halfName(fit, half) }
  const chosen = state.shells[fit.id]?.find((choice) => choice.position === position && choice.half === half)
  if (chosen === undefined) return refused('shell-not-chosen', named)
  if (state.fitted.has(halfKey(position, half))) return refused('half-in-place', named)
  if (chosen.label === null && command.arrived !== true)
    return refused('shell-to-be-ordered', { ...named, grade: chosen.grade })
  const arrival = chosen.label === null ? { arrived: true as const } : {}
  return done([{ type: 'half-fitted', version, step: command.step, position, half, ...arrival }])
}

export function takeOutHalf(
  { spec, state, step }: BuildAtStep<'fit-shells'>,
  command: CommandOf<'take-out-half'>,
): Events {
  const { position, half } = command
  const fit = fitOf(spec, step.fit)
  if (!fit.positions.includes(position)) return refused('position-not-in-fit', { position, fit: fit.name })
  const named = { position, half: halfName(fit, half) }
  if (!state.fitted.has(halfKey(position, half))) return refused('half-not-in-place', named)
  const reason = readReason(command.reason, { what: 'half-taken-out', ...named })
  if (!reason.ok) return reason
  return done([{ type: 'half-taken-out', version, step: command.step, position, half, reason: reason.value }])
}

export function fitPart({ state, step }: BuildAtStep<'fit-part'>): Events {
  if (state.partsFitted.has(step.id)) return refused('step-done-already', { step: step.name })
  return done([{ type: 'part-fitted', version, step: step.id }])
}

export function takeOutPart(
  { state, step }: BuildAtStep<'fit-part'>,
  command: CommandOf<'take-out-part'>,
): Events {
  if (!state.partsFitted.has(step.id)) return refused('step-not-done', { step: step.name })
  const reason = readReason(command.reason, { what: 'part-taken-out', step: step.name })
  if (!reason.ok) return reason
  return done([{ type: 'part-taken-out', version, step: step.id, reason: reason.value }])
}

export function layBead({ state, step }: BuildAtStep<'lay-bead'>): Events {
  const { id, name, bead } = step
  if (state.beads[bead] !== undefined) return refused('step-done-already', { step: name })
  return done([{ type: 'bead-laid', version, step: id, bead }])
}

/**
 * For sealant that has skinned over, or went where it must not: the joint is wiped and the bead laid again.
 */
export function wipeOffBead(
  { state, step }: BuildAtStep<'lay-bead'>,
  command: CommandOf<'wipe-off-bead'>,
): Events {
  const { id, name, bead } = step
  if (state.beads[bead] === undefined) return refused('step-not-done', { step: name })
  const reason = readReason(command.reason, { what: 'bead-wiped-off' })
  return reason.ok
    ? done([{ type: 'bead-wiped-off', version, step: id, bead, reason: reason.value }])
    : reason
}
