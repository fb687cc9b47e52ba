import { done, refused, type Outcome } from '../problem/index.ts'
import { inMillimetres, millimetres, type Length } from '../quantity/index.ts'

/** A metric thread: what is marked on it, and the basic sizes that follow. Made by `threadOf` alone. */
export type Thread = {
  /** Nominal diameter d. */
  readonly diameter: Length
  /** Pitch P. */
  readonly pitch: Length
  /** d2. */
  readonly pitchDiameter: Length
  /** d3, at the root of the screw's thread. */
  readonly rootDiameter: Length
  /** d0, the diameter of the stress area: the mean of d2 and d3. */
  readonly stressDiameter: Length
  /** A_s = π/4·d0². */
  readonly stressAreaMm2: number
}

const leastDiameterMm = 1
const mostDiameterMm = 300
/** The coarsest thread of ISO 261, M1, has a quarter; a third leaves room for threads outside it and none for a slip of the pen. */
const mostPitchShare = 1 / 3

/**
 * The thread of a nominal diameter and pitch: d2 = d − 0.649519·P, d3 = d − 1.226869·P (ISO 724, ISO 68-1), A_s over
 * their mean (ISO 898-1, 9.1.6.1).
 *
 * Refuses `thread-diameter-out-of-range` outside 1 to 300 mm, bounds included, and `thread-pitch-out-of-range` unless
 * the pitch is above zero and at most a third of the diameter.
 */
export function threadOf(diameter: Length, pitch: Length): Outcome<Thread> {
  const d = inMillimetres(diameter)
  const p = inMillimetres(pitch)
  if (d < leastDiameterMm || d > mostDiameterMm) {
    return refused('thread-diameter-out-of-range', { diameterMm: d })
  }
  if (p <= 0 || p > d * mostPitchShare) {
    return refused('thread-pitch-out-of-range', { diameterMm: d, pitchMm: p })
  }
  const d2 = d - 0.649519 * p
  const d3 = d - 1.226869 * p
  const d0 = (d2 + d3) / 2
  return done({
    diameter,
    pitch,
    pitchDiameter: millimetres(d2),
    rootDiameter: millimetres(d3),
    stressDiameter: millimetres(d0),
    stressAreaMm2: (Math.PI / 4) * d0 ** 2,
  })
}

/** `M10×1.5`: the pitch is always named, so that nobody need know which one is coarse. */
export function formatThread({ diameter, pitch }: Thread): string {
  return `M${inMillimetres(diameter)}×${inMillimetres(pitch)}`
}
