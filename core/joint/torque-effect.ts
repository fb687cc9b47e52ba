import { newtons, type Force, type Torque } from '../quantity/index.ts'
import type { FastenedJoint, ThreadState } from './fastened.ts'
import { proofLoad } from './property-class.ts'
import { preloadFromTorque, torqueSplit, type Screw, type TorqueSplit } from './screw.ts'
import { assemblyPreload, tighteningStress, type TighteningStress } from './stress.ts'

/** What is to be expected, and between what it lies. */
export interface Spread<Value extends number> {
  readonly least: Value
  readonly usual: Value
  readonly most: Value
}

/** What a torque does to a fastener, all by itself. */
export interface TorqueEffect {
  readonly preload: Spread<Force>
  /** Within what share of the usual preload the others lie, either way. */
  readonly scatter: number
  /**
   * Where the torque goes at the usual friction. Only what climbs the pitch clamps; `lostShare` is the rest,
   * 0 to 1.
   */
  readonly split: TorqueSplit
  readonly lostShare: number
  readonly proofLoad: Force
  /** Where the fastener begins to yield while it is pulled, twist and all. */
  readonly yieldLoad: Force
  /** The preload as a share of the proof load. */
  readonly ofProof: Spread<number>
  /** At the usual preload, while the wrench turns, and what share of the yield point that is. */
  readonly stress: TighteningStress
  readonly ofYield: number
}

/**
 * How wide preload scatters about what it usually is at one torque: NASA's typical uncertainties, ±25 % for
 * lubricated threads and ±35 % for dry ones. Sealant and thread-lock count as the worse of the two.
 */
export function torqueScatter(state: ThreadState): number {
  return state === 'oiled' ? 0.25 : 0.35
}

/** A fastener at its usual friction. */
export function usualScrew({ thread, bearing, friction }: FastenedJoint): Screw {
  return { thread, bearing, friction: { thread: friction.usual, head: friction.usual } }
}

/** The load at which a fastener begins to yield while it is turned, at its usual friction. */
export function yieldLoadOf({ thread, strength, friction }: FastenedJoint): Force {
  return assemblyPreload(thread, strength, friction.usual, 1)
}

/** The preload that a torque gives, with its scatter. */
export function preloadSpread(joint: FastenedJoint, torque: Torque): Spread<Force> {
  const usual = preloadFromTorque(usualScrew(joint), torque)
  const scatter = torqueScatter(joint.threadState)
  return { least: newtons(usual * (1 - scatter)), usual, most: newtons(usual * (1 + scatter)) }
}

/**
 * What a torque, above zero, does to a fastener while it is elastic. Where `ofYield` is above 1 it is not:
 * the fastener then holds less than this says, and is longer than it was.
 */
export function torqueEffect(joint: FastenedJoint, torque: Torque): TorqueEffect {
  const preload = preloadSpread(joint, torque)
  const split = torqueSplit(usualScrew(joint), torque)
  const proof = proofLoad(joint.thread, joint.strength)
  const stress = tighteningStress(joint.thread, preload.usual, joint.friction.usual)
  return {
    preload,
    scatter: torqueScatter(joint.threadState),
    split,
    lostShare: (split.thread + split.head) / torque,
    proofLoad: proof,
    yieldLoad: yieldLoadOf(joint),
    ofProof: sharesOf(preload, proof),
    stress,
    ofYield: stress.equivalentMpa / joint.strength.yieldMpa,
  }
}

/** A spread of loads as shares of one load. */
export function sharesOf({ least, usual, most }: Spread<Force>, load: Force): Spread<number> {
  return { least: least / load, usual: usual / load, most: most / load }
}
