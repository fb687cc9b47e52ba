import type { BuildState } from '../../../../core/builds/index.ts'
import { degrees, type Angle } from '../../../../core/quantity/index.ts'
import type { EngineSpec, Step } from '../../../../core/engine/index.ts'
import {
  isShort,
  nextPull,
  openFlags,
  protractor,
  swings,
  windowNow,
} from '../../../../core/tightening/index.ts'
import type { PlannedPull, Run, AcceptanceWindow } from '../../../../core/tightening/index.ts'
import type { DrawingFacts, HandleDirections } from '../../../../core/layout/index.ts'
import type { Handle } from '../../../bench/handle.svelte.ts'

/** The turn by an angle that is next in a step. */
export interface NextTurn {
  readonly fastener: string
  readonly window: Extract<AcceptanceWindow, { kind: 'angle' }>
  /** Names this pull among all of the build: what was counted for another does not count for it. */
  readonly pull: string
}

/** Null where the step is no run under way, or what is next is no turn. */
export function nextTurn(spec: EngineSpec, state: BuildState, step: Step): NextTurn | null {
  const pull = pullDue(spec, state, step)
  if (pull?.window?.kind !== 'angle' || pull.fastener === null) return null
  return { fastener: pull.fastener, window: pull.window, pull: pull.name }
}

/** The turn that a drawing shows: while another fastener is to be acted on, nothing is next on it. */
export function turnOnDrawing(
  turn: NextTurn | null,
  { actOn }: Pick<DrawingFacts, 'actOn'>,
): NextTurn | null {
  if (turn === null || actOn === null) return turn
  return actOn === `fastener/${turn.fastener}` ? turn : null
}

/** Whether what is next takes a reading, so that a digit begins one. */
export function isReadingDue(spec: EngineSpec, state: BuildState, step: Step): boolean {
  return (pullDue(spec, state, step)?.window ?? null) !== null
}

function pullDue(spec: EngineSpec, state: BuildState, step: Step) {
  if (step.kind !== 'run-procedure') return null
  const procedure = spec.procedures.find(({ id }) => id === step.procedure)
  const run = state.runs[step.procedure]
  if (!procedure || !run || run.paused !== null) return null
  const next = turnedShort(run) ?? nextPull(procedure, run)
  if (!next) return null
  return {
    fastener: next.fastener,
    window: windowNow(procedure, run, next),
    name: `${procedure.id}/${run.pulls.length}`,
  }
}

/** A turn that came short goes before what is next: it is turned on where it stands. */
function turnedShort(run: Run): PlannedPull | null {
  const flagged = new Set(openFlags(run).map(({ pull }) => pull))
  const pull = run.pulls.find((each) => flagged.has(each.number) && isShort(run, each))
  return pull === undefined ? null : { pass: pull.pass, fastener: pull.fastener }
}

/** The swing of a turn that is next, where the room splits the turn and more than one is left; null where it does not. */
export function nextSwing({ window, pull }: NextTurn, handle: Handle) {
  if (handle.room === null) return null
  const split = swings(window.target, degrees(handle.room), handle.grip)
  const at = handle.swings(pull)
  if (!split.ok || at >= split.value.length - 1) return null
  return { number: at + 1, of: split.value.length, by: split.value[at]!.by }
}

/** The protractor of a turn with the handle as it stands, and the turn as far as it was read. */
export function handleDirections({ window, pull }: NextTurn, handle: Handle): HandleDirections {
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
