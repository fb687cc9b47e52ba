import { degrees, newtons, type Angle, type Force } from '../quantity/index.ts'
import type { FastenedJoint } from './fastened.ts'
import { proofLoad } from './property-class.ts'
import type { TorqueRange } from './torque-against-proof.ts'
import { preloadSpread, sharesOf, yieldLoadAt, type OpenSpread, type Spread } from './torque-effect.ts'
import { preloadAfterTurn, preloadGain, turnForPreload, type PreloadAfterTurn } from './turn.ts'

/** A turn that is asked for, the limits included. */
export interface TurnWindow {
  readonly target: Angle
  readonly least: Angle
  readonly most: Angle
}

/** What a turn after a torque does to a fastener. */
export interface TurnEffect {
  /** What the torque before has left. */
  readonly snug: Spread<Force>
  /** What each degree adds while all is elastic. */
  readonly perDegree: Force
  /** After the target, from the usual snug preload. */
  readonly turned: PreloadAfterTurn
  /**
   * From the least that the torque left and the least turn, to the most of both; the most is null where that is past yield.
   */
  readonly preload: OpenSpread<Force>
  readonly proofLoad: Force
  readonly yieldLoad: Force
  readonly ofProof: OpenSpread<number>
  /** From the usual snug preload to where the fastener yields; 0° where the torque alone goes past. */
  readonly toYield: Angle
  /** The same to the proof load; null where the fastener yields first, twisted as it is. */
  readonly toProof: Angle | null
}

/**
 * What a turn, counted from a torque, does to a fastener and its joint: ΔF = θ/360° · P/(δ_S + δ_P) (VDI 2230
 * part 1), up to where it yields. What steel gains by hardening past there is left out.
 */
export function turnEffect(joint: FastenedJoint, torque: TorqueRange, turn: TurnWindow): TurnEffect {
  const { friction } = joint
  const snug = preloadSpread(joint, torque)
  const resilience = resilienceOf(joint)
  const yieldLoad = yieldLoadAt(joint, friction.usual)
  const proof = proofLoad(joint.thread, joint.strength)
  const after = (from: Force, by: Angle, coefficient: number) =>
    preloadAfterTurn(
      { thread: joint.thread, resilienceMmPerN: resilience, yieldLoad: yieldLoadAt(joint, coefficient) },
      from,
      by,
    )
  const turned = after(snug.usual, turn.target, friction.usual)
  const most = after(snug.most, turn.most, friction.least)
  const preload = {
    least: after(snug.least, turn.least, friction.most).preload,
    usual: turned.preload,
    most: most.state === 'elastic' ? most.preload : null,
  }
  const upTo = (load: Force) =>
    turnForPreload(joint.thread, newtons(Math.max(0, load - snug.usual)), resilience)
  return {
    snug,
    perDegree: preloadGain(joint.thread, degrees(1), resilience),
    turned,
    preload,
    proofLoad: proof,
    yieldLoad,
    ofProof: sharesOf(preload, proof),
    toYield: upTo(yieldLoad),
    toProof: proof > yieldLoad ? null : upTo(proof),
  }
}

/** δ_S + δ_P, in mm/N. */
function resilienceOf({ boltMmPerN, clampedMmPerN }: FastenedJoint): number {
  return boltMmPerN + clampedMmPerN
}
