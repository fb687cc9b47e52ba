import type { BuildState } from '../../../core/builds/index.ts'
import { degrees, type Angle } from '../../../core/quantity/index.ts'
import type { EngineSpec, Step } from '../../../core/engine/index.ts'
import { nextPull, protractor, windowOf, type Window } from '../../../core/tightening/index.ts'
import type { HandleDirections } from '../../../core/layout/index.ts'
import type { Handle } from '../../bench/handle.svelte.ts'

/** The turn by an angle that is next in a step. */
export interface TurnInHand {
  readonly fastener: string
  readonly window: Extract<Window, { kind: 'angle' }>
  /** Names this pull among all of the build: what was counted for another does not count for it. */
  readonly pull: string
}

/** Null where the step is no run under way, or what is next is no turn. */
export function turnInHand(spec: EngineSpec, state: BuildState, step: Step): TurnInHand | null {
  const pull = pullInHand(spec, state, step)
  if (pull?.window?.kind !== 'angle' || pull.fastener === null) return null
  return { fastener: pull.fastener, window: pull.window, pull: pull.name }
}

/** Whether what is next takes a reading, so that a digit begins one. */
export function isReadingDue(spec: EngineSpec, state: BuildState, step: Step): boolean {
  return (pullInHand(spec, state, step)?.window ?? null) !== null
}

function pullInHand(spec: EngineSpec, state: BuildState, step: Step) {
  if (step.kind !== 'run-procedure') return null
  const procedure = spec.procedures.find(({ id }) => id === step.procedure)
  const run = state.runs[step.procedure]
  if (!procedure || !run || run.paused !== null) return null
  const next = nextPull(procedure, run)
  if (!next) return null
  return {
    fastener: next.fastener,
    window: windowOf(procedure.passes[next.pass]!, next.fastener),
    name: `${procedure.id}/${run.pulls.length}`,
  }
}

/** The protractor of a turn with the handle as it stands, and the turn as far as it was read. */
export function handleDirections({ window, pull }: TurnInHand, handle: Handle): HandleDirections {
  const { start, end, least, most, flats } = protractor(handle.start, window, handle.sense)
  const reached = handle.reached(pull)
  return {
    start,
    end: reached === null ? end : directionAfter(handle, reached),
    least,
    most,
    flats,
    sense: handle.sense,
    turned: reached ?? window.target,
  }
}

function directionAfter(handle: Handle, turned: Angle): Angle {
  const signed = handle.sense === 'clockwise' ? turned : 0 - turned
  return degrees((((handle.start + signed) % 360) + 360) % 360)
}
