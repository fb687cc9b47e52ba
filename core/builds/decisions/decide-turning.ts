import { done, refused } from '../../problem/index.ts'
import { readReason, readTurning, riseOf, verdictOfTurning } from '../../tightening/index.ts'
import { turnedBefore } from '../steps/turnings.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

type BuildAtTurning = BuildAtStep<'turn'>
const version = 1

/**
 * The crank may be turned as often as one likes; the last time counts. Refuses `turning-missing` where the step has limits and
 * nothing was read, `turning-by-hand` where it has none, what `readTurning` does, and `reason-missing` where it binds and nobody
 * says where, or turns freely after it did not and nobody says what was done.
 */
export function turnCrank({ spec, state, step }: BuildAtTurning, command: CommandOf<'turn-crank'>): Events {
  const { typed, free, readWith } = command
  const common = { type: 'crank-turned', version, step: step.id } as const
  if (step.turning === undefined) {
    if (typed !== null) return refused('turning-by-hand', { step: step.name })
    const wasFree = state.turnings[step.id]?.verdict !== 'binds'
    const what = free ? 'turns-again' : 'crank-binds'
    const note = free && wasFree ? done(command.note.trim()) : readReason(command.note, { what })
    if (!note.ok) return note
    const verdict = free ? 'free' : 'binds'
    return done([{ ...common, reading: null, rise_Nm: null, verdict, note: note.value }])
  }
  if (typed === null || typed.trim() === '') return refused('turning-missing', { step: step.name })
  const read = readTurning(typed.trim(), step.turning.unit)
  if (!read.ok) return read
  const { reading, torque } = read.value
  const rise = riseOf(torque, turnedBefore(spec, state, step))
  const verdict = verdictOfTurning(step.turning, torque, rise)
  const taken = { reading, ...(readWith !== undefined && { readWith }) }
  return done([{ ...common, ...taken, rise_Nm: rise, verdict, note: command.note.trim() }])
}

/** Refuses `turning-not-outside` where nothing is outside its limits, and `reason-missing`. */
export function acceptTurning({ state, step }: BuildAtTurning, command: CommandOf<'accept-turning'>): Events {
  const turned = state.turnings[step.id]
  if (
    turned === undefined ||
    turned.accepted !== null ||
    (turned.verdict !== 'over' && turned.verdict !== 'under')
  )
    return refused('turning-not-outside', { step: step.name })
  const reason = readReason(command.reason, { what: 'turning-accepted' })
  return reason.ok
    ? done([{ type: 'turning-accepted', version, step: step.id, reason: reason.value }])
    : reason
}

/** Refuses `step-not-done` where the crank was not turned, and `reason-missing`. */
export function voidTurning({ state, step }: BuildAtTurning, command: CommandOf<'void-turning'>): Events {
  if (state.turnings[step.id] === undefined) return refused('step-not-done', { step: step.name })
  const reason = readReason(command.reason, { what: 'turning-voided' })
  return reason.ok ? done([{ type: 'turning-voided', version, step: step.id, reason: reason.value }]) : reason
}
