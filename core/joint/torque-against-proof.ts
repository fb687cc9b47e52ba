import type { Force, Torque } from '../quantity/index.ts'
import { clampingTorque } from './clamping-torque.ts'
import type { FastenedJoint, FrictionRange } from './fastened.ts'
import { proofLoad } from './property-class.ts'
import { preloadFromTorque } from './screw.ts'
import { assemblyPreload } from './stress.ts'

/** A torque with its limits; a limit that is not known is the target itself. */
export interface TorqueRange {
  readonly target: Torque
  readonly least?: Torque | undefined
  readonly most?: Torque | undefined
}

/**
 * Below this share of the proof load, at the least friction, a final torque clamps next to nothing. Common practice, no
 * source: screws are pulled to between a third and nine tenths. The largest torque that is no overload, its foot-pounds
 * written down as inch-pounds, would give 0.21.
 */
const hardlyAnyShare = 0.2

/**
 * - `overload`: past proof even at the most friction, by the target or by the upper limit. The value is wrong, or the class
 *   or the thread is.
 * - `likely-overload`: at the usual friction the target or the upper limit goes past proof, or past where the screw yields
 *   while it is turned.
 * - `plausible`: neither too much nor too little. Most published torques would go past proof at the least friction, and are
 *   none the worse for it.
 * - `next-to-no-clamp`: less than a fifth of proof even at the least friction. Right for a torque that seats a joint before
 *   a turn or a higher torque, wrong for a final one.
 */
export type TorqueVerdict = 'overload' | 'likely-overload' | 'plausible' | 'next-to-no-clamp'

/** What a torque does to a screw over all the friction of its threads. */
export interface TorqueAgainstProof {
  /** The most that it may give of the target or the upper limit, at the most and at the usual friction. */
  readonly preloadAtMostFriction: Force
  readonly preloadAtUsualFriction: Force
  /** The most that the target may give. */
  readonly preloadAtLeastFriction: Force
  readonly proofLoad: Force
  /** What the screw bears while it is turned, at the usual friction: the proof load, or less where it yields before. */
  readonly bears: Force
  readonly verdict: TorqueVerdict
}

/**
 * Weighs a torque against the proof load of the screw it is for, by `preloadFromTorque` over the friction of its threads'
 * state, the same as `torqueEffect` explains it by; the most friction goes with the most prevailing torque. To find whether inch-pounds were taken for foot-pounds, ask again with
 * the torque times or divided by twelve.
 */
export function torqueAgainstProof(
  {
    thread,
    strength,
    bearing,
    friction,
    prevailing,
  }: Pick<FastenedJoint, 'thread' | 'strength' | 'bearing' | 'friction' | 'prevailing'>,
  { target, most = target }: TorqueRange,
): TorqueAgainstProof {
  const highestTorque = most > target ? most : target
  const preloadAt = (torque: Torque, at: keyof FrictionRange) =>
    preloadFromTorque(
      { thread, bearing, friction: { thread: friction[at], head: friction[at] } },
      clampingTorque({ prevailing }, torque, at),
    )
  const proof = proofLoad(thread, strength)
  const yieldLoad = assemblyPreload(thread, strength, friction.usual, 1)
  const weighed = {
    preloadAtMostFriction: preloadAt(highestTorque, 'most'),
    preloadAtUsualFriction: preloadAt(highestTorque, 'usual'),
    preloadAtLeastFriction: preloadAt(target, 'least'),
    proofLoad: proof,
    bears: yieldLoad < proof ? yieldLoad : proof,
  }
  return { ...weighed, verdict: verdictOn(weighed) }
}

function verdictOn(weighed: Omit<TorqueAgainstProof, 'verdict'>): TorqueVerdict {
  const { proofLoad, bears } = weighed
  if (weighed.preloadAtMostFriction > proofLoad) return 'overload'
  if (weighed.preloadAtUsualFriction > bears) return 'likely-overload'
  if (weighed.preloadAtLeastFriction < hardlyAnyShare * proofLoad) return 'next-to-no-clamp'
  return 'plausible'
}
