import type { Force, Torque } from '../quantity/index.ts'
import { clampingTorque } from './clamping-torque.ts'
import type { FastenedJoint, FrictionRange } from './fastened.ts'
import { proofLoad } from './property-class.ts'
import { preloadFromTorque, torqueSplit, type Screw, type TorqueSplit } from './screw.ts'
import { assemblyPreload, tighteningStress, type TighteningStress } from './stress.ts'
import type { TorqueRange } from './torque-against-proof.ts'

/** What is to be expected, and between what it lies. */
export interface Spread<Value extends number> {
  readonly least: Value
  readonly usual: Value
  readonly most: Value
}

/** The same where the most may be past yield: what a yielding fastener holds is not known, so there is no upper bound. */
export type OpenSpread<Value extends number> = Omit<Spread<Value>, 'most'> & { readonly most: Value | null }

/** What a torque does to a fastener, all by itself. */
export interface TorqueEffect {
  /** From the lower limit at the most friction to the upper limit at the least. */
  readonly preload: OpenSpread<Force>
  /**
   * Where the target goes at the usual friction, without what turned the fastener before it clamped. Only what climbs the
   * pitch clamps; `lostShare` is all the rest, 0 to 1.
   */
  readonly split: TorqueSplit
  /** What usually turned it before it clamped. */
  readonly prevailing: Torque
  readonly lostShare: number
  readonly proofLoad: Force
  /** Where the fastener begins to yield while it is pulled, twist and all, at the usual friction. */
  readonly yieldLoad: Force
  /** The preload as a share of the proof load. */
  readonly ofProof: OpenSpread<number>
  /** At the usual preload, while the wrench turns. */
  readonly stress: TighteningStress
  /** The stress as a share of the yield point, each at its own preload and friction; above 1 it yields. */
  readonly ofYield: Spread<number>
}

/** A fastener with one friction in thread and head. */
function screwAt({ thread, bearing }: FastenedJoint, coefficient: number): Screw {
  return { thread, bearing, friction: { thread: coefficient, head: coefficient } }
}

/** A fastener at its usual friction. */
export function usualScrew(joint: FastenedJoint): Screw {
  return screwAt(joint, joint.friction.usual)
}

/** The load at which a fastener begins to yield while it is turned, at a friction in its thread. */
export function yieldLoadAt({ thread, strength }: FastenedJoint, coefficient: number): Force {
  return assemblyPreload(thread, strength, coefficient, 1)
}

/** The preload that a torque gives while all is elastic, over its limits, the friction of the threads' state and what runs it down. */
export function preloadSpread(
  joint: FastenedJoint,
  { target, least = target, most = target }: TorqueRange,
): Spread<Force> {
  const at = (torque: Torque, takes: keyof FrictionRange) =>
    preloadFromTorque(screwAt(joint, joint.friction[takes]), clampingTorque(joint, torque, takes))
  return { least: at(least, 'most'), usual: at(target, 'usual'), most: at(most, 'least') }
}

/**
 * What a torque, above zero, does to a fastener while it is elastic. Where `ofYield.usual` is above 1 it is not:
 * the fastener then holds less than this says, and is longer than it was.
 */
export function torqueEffect(joint: FastenedJoint, torque: TorqueRange): TorqueEffect {
  const { thread, strength, friction } = joint
  const elastic = preloadSpread(joint, torque)
  const split = torqueSplit(usualScrew(joint), clampingTorque(joint, torque.target))
  const proof = proofLoad(thread, strength)
  const used = (preload: Force, coefficient: number) =>
    tighteningStress(thread, preload, coefficient).equivalentMpa / strength.yieldMpa
  const ofYield = {
    least: used(elastic.least, friction.most),
    usual: used(elastic.usual, friction.usual),
    most: used(elastic.most, friction.least),
  }
  const preload = { ...elastic, most: ofYield.most > 1 ? null : elastic.most }
  return {
    preload,
    split,
    prevailing: joint.prevailing.usual,
    lostShare: 1 - split.pitch / torque.target,
    proofLoad: proof,
    yieldLoad: yieldLoadAt(joint, friction.usual),
    ofProof: sharesOf(preload, proof),
    stress: tighteningStress(thread, elastic.usual, friction.usual),
    ofYield,
  }
}

/** A spread of loads as shares of one load. */
export function sharesOf({ least, usual, most }: OpenSpread<Force>, load: Force): OpenSpread<number> {
  return { least: least / load, usual: usual / load, most: most === null ? null : most / load }
}
