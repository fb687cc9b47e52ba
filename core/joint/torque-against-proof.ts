import { done, type Outcome } from '../problem/index.ts'
import type { Force, Torque } from '../quantity/index.ts'
import type { BearingFace } from './bearing-face.ts'
import { proofLoad, strengthOf } from './property-class.ts'
import { preloadFromTorque } from './screw.ts'
import type { Thread } from './thread.ts'

/**
 * The friction to reckon with in engine fasteners, thread and head alike, from VDI 2230 part 1, table A5: class B (0.08 to
 * 0.16, oiled or waxed) and class C (0.14 to 0.24, as delivered, dry) together. The usual value is the middle of what both
 * classes cover.
 */
export const plausibleFriction = { least: 0.08, usual: 0.15, most: 0.24 } as const

/**
 * Below this share of the proof load, at the least friction, a final torque clamps next to nothing. Common practice, no
 * source: screws are pulled to between a third and nine tenths. The largest torque that is no overload, its foot-pounds
 * written down as inch-pounds, would give 0.21.
 */
const hardlyAnyShare = 0.2

/**
 * - `overload`: past proof even at the most friction. The value is wrong, or the class or the thread is.
 * - `likely-overload`: past proof at the usual friction, though not at the most.
 * - `plausible`: neither too much nor too little. Most published torques would go past proof at the least friction, and are
 *   none the worse for it.
 * - `next-to-no-clamp`: less than a fifth of proof even at the least friction. Right for a torque that seats a joint before
 *   a turn or a higher torque, wrong for a final one.
 */
export type TorqueVerdict = 'overload' | 'likely-overload' | 'plausible' | 'next-to-no-clamp'

/** What a torque does to a screw over all plausible friction. */
export type TorqueAgainstProof = {
  /** The highest preload that the torque can give. */
  readonly preloadAtLeastFriction: Force
  readonly preloadAtUsualFriction: Force
  /** The lowest. */
  readonly preloadAtMostFriction: Force
  readonly proofLoad: Force
  readonly verdict: TorqueVerdict
}

/**
 * Weighs a torque against the proof load of the screw it is for, by `preloadFromTorque` over `plausibleFriction`. To find
 * whether inch-pounds were taken for foot-pounds, ask again with the torque times or divided by twelve.
 *
 * Refuses `property-class-unknown`.
 */
export function torqueAgainstProof(pull: {
  readonly thread: Thread
  readonly propertyClass: string
  readonly bearing: BearingFace
  readonly torque: Torque
}): Outcome<TorqueAgainstProof> {
  const { thread, bearing, torque } = pull
  const strength = strengthOf(pull.propertyClass, thread)
  if (!strength.ok) return strength

  const preloadAt = (friction: number) =>
    preloadFromTorque({ thread, bearing, friction: { thread: friction, head: friction } }, torque)
  const preloads = {
    preloadAtLeastFriction: preloadAt(plausibleFriction.least),
    preloadAtUsualFriction: preloadAt(plausibleFriction.usual),
    preloadAtMostFriction: preloadAt(plausibleFriction.most),
    proofLoad: proofLoad(thread, strength.value),
  }
  return done({ ...preloads, verdict: verdictOn(preloads) })
}

function verdictOn(preloads: Omit<TorqueAgainstProof, 'verdict'>): TorqueVerdict {
  const { proofLoad } = preloads
  if (preloads.preloadAtMostFriction > proofLoad) return 'overload'
  if (preloads.preloadAtUsualFriction > proofLoad) return 'likely-overload'
  if (preloads.preloadAtLeastFriction < hardlyAnyShare * proofLoad) return 'next-to-no-clamp'
  return 'plausible'
}
