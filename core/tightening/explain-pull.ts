import {
  fastenedJoint,
  torqueEffect,
  torqueInputs,
  turnEffect,
  turnInputs,
  turnPlot,
  workingLoadEffect,
  type Input,
  type TorqueEffect,
  type TurnEffect,
  type TurnPlot,
  type TurnWindow,
  type WorkingLoadEffect,
} from '../joint/index.ts'
import { done, type Outcome } from '../problem/index.ts'
import { degrees, newtonMetres } from '../quantity/index.ts'
import type { EngineSpec, Procedure } from '../engine/index.ts'
import { groupOf } from './order/fastener-group.ts'
import { plannedIn } from './run/plan.ts'
import { windowOf, type AcceptanceWindow } from './reading/window.ts'
import type { TorqueWindow } from './wrench/index.ts'

/**
 * What one pull does to its fastener, with what the calculation was made from. It explains the spec's value and
 * judges nothing.
 */
export type PullExplanation =
  | {
      readonly kind: 'torque'
      readonly torque: TorqueWindow
      readonly effect: TorqueEffect
      readonly inputs: readonly Input[]
      readonly workingLoad: WorkingLoadEffect | null
    }
  | {
      readonly kind: 'turn'
      /** The torque that the turn counts from. */
      readonly torque: TorqueWindow
      /** All turns since then, this pass included: two of 45° are one of 90°. */
      readonly turn: TurnWindow
      readonly effect: TurnEffect
      readonly plot: TurnPlot
      readonly inputs: readonly Input[]
      /** What the load of the running engine does to the joint, where the spec names one: a lesson, no judgement. */
      readonly workingLoad: WorkingLoadEffect | null
    }

/**
 * What a fastener's pull in one pass (counted from 0) does; null where that is not known: by hand,
 * loosening, measuring, a turn that no torque came before, a fastener or a pass that is not there.
 *
 * `read` puts what the pull was read as, in N·m or °, in the place of what the pass asks for. Refuses what `fastenedJoint`
 * refuses.
 */
export function explainPull(
  spec: EngineSpec,
  procedure: Procedure,
  pass: number,
  fastener: string,
  read: number | null = null,
): Outcome<PullExplanation | null> {
  const group = groupOf(spec, fastener)
  if (group === undefined) return done(null)
  const torqueAsked = askedOf(procedure, pass, fastener, read)
  if (torqueAsked === null) return done(null)
  const found = fastenedJoint(group)
  if (!found.ok) return found
  const joint = found.value
  const { torque, turn } = torqueAsked
  const inputs = torqueInputs(group, joint)
  const loaded = (preload: TorqueEffect['preload']) =>
    group.workingLoad === undefined ? null : workingLoadEffect(joint, preload, group.workingLoad)
  if (turn === null) {
    const effect = torqueEffect(joint, torque)
    return done({ kind: 'torque', torque, effect, inputs, workingLoad: loaded(effect.preload) })
  }
  const effect = turnEffect(joint, torque, turn)
  return done({
    kind: 'turn',
    torque,
    turn,
    effect,
    workingLoad: loaded(effect.preload),
    plot: turnPlot(joint, torque, turn),
    inputs: [...inputs, ...turnInputs(group, joint)],
  })
}

interface AskedTorque {
  readonly torque: TorqueWindow
  readonly turn: TurnWindow | null
}

/**
 * The last torque of a fastener up to a pass, and what it was turned since; null unless that pass is one of
 * them.
 */
function askedOf(
  procedure: Procedure,
  upTo: number,
  fastener: string,
  read: number | null,
): AskedTorque | null {
  let torqueAsked: AskedTorque | null = null
  const kind = procedure.passes[upTo]?.kind
  if (kind !== 'torque' && kind !== 'recheck' && kind !== 'angle') return null
  if (!plannedIn(procedure, upTo).some((pull) => pull.fastener === fastener)) return null
  procedure.passes.slice(0, upTo + 1).forEach((pass, place) => {
    if (!plannedIn(procedure, place).some((pull) => pull.fastener === fastener)) return
    const asks = windowOf(pass, fastener)
    const window = read !== null && place === upTo ? asRead(asks, read) : asks
    // What it holds after a stretch is what was measured, and does not come from a torque.
    if (pass.kind === 'loosen' || pass.kind === 'tighten-to-stretch') torqueAsked = null
    else if (window?.kind === 'torque')
      torqueAsked =
        pass.kind === 'recheck' ? recheckedTorque(torqueAsked, window) : { torque: window, turn: null }
    else if (window?.kind === 'angle' && torqueAsked !== null)
      torqueAsked = { ...torqueAsked, turn: sumOfTurns(torqueAsked.turn, window) }
  })
  return torqueAsked
}

function asRead(window: AcceptanceWindow | null, read: number): AcceptanceWindow | null {
  if (window?.kind === 'torque')
    return { ...window, target: newtonMetres(read), least: newtonMetres(read), most: newtonMetres(read) }
  if (window?.kind !== 'angle') return window
  return { ...window, target: degrees(read), least: degrees(read), most: degrees(read) }
}

/** A recheck moves nothing that holds; only one that is set higher than the torque before would raise that. */
function recheckedTorque(torqueAsked: AskedTorque | null, window: TorqueWindow): AskedTorque | null {
  if (torqueAsked === null || torqueAsked.turn !== null || window.target <= torqueAsked.torque.target)
    return torqueAsked
  return { torque: window, turn: null }
}

function sumOfTurns(turn: TurnWindow | null, { target, least, most }: TurnWindow): TurnWindow {
  if (turn === null) return { target, least, most }
  return {
    target: degrees(turn.target + target),
    least: degrees(turn.least + least),
    most: degrees(turn.most + most),
  }
}
