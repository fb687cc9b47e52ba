import { done, refused, type Outcome } from '../problem/index.ts'
import { inMillimetres, millimetres, unifiedName, type Length, type ThreadSystem } from '../quantity/index.ts'

/** A thread: what is marked on it, and the basic sizes that follow. Made by `threadOf` alone. */
export type Thread = {
  readonly system: ThreadSystem
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
 * The finest pitch of ISO 261 from a diameter on, in mm. Adjusting screws have finer ones; half of it leaves room for those
 * and none for a slip of the decimal point.
 */
const finestPitches = [
  [1, 0.2],
  [2, 0.25],
  [2.5, 0.35],
  [4, 0.5],
  [6, 0.75],
  [12, 1],
  [32, 1.5],
  [80, 2],
  [150, 3],
] as const
const leastPitchShare = 1 / 2

/** How many pitches d3 is below d: ISO 68-1, and for unified threads what A_t = π/4·(d − 0.9743·P)² of ASME B1.1 comes to. */
const rootPitches: Readonly<Record<ThreadSystem, number>> = { metric: 1.226869, unified: 1.299038 }

/**
 * The thread of a nominal diameter and pitch: d2 = d − 0.649519·P, d3 = d − 1.226869·P (ISO 724, ISO 68-1; 1.299038·P of a
 * unified one), A_s over their mean (ISO 898-1, 9.1.6.1; ASME B1.1).
 *
 * Refuses `thread-diameter-out-of-range` outside 1 to 300 mm, bounds included, and `thread-pitch-out-of-range` unless
 * the pitch is at least half of the finest of ISO 261 and at most a third of the diameter.
 */
export function threadOf(diameter: Length, pitch: Length, system: ThreadSystem = 'metric'): Outcome<Thread> {
  const d = inMillimetres(diameter)
  const p = inMillimetres(pitch)
  if (d < leastDiameterMm || d > mostDiameterMm) {
    return refused('thread-diameter-out-of-range', { diameterMm: d })
  }
  const finest = finestPitches.findLast(([from]) => d >= from)?.[1] ?? 0
  if (p < finest * leastPitchShare || p > d * mostPitchShare) {
    return refused('thread-pitch-out-of-range', { diameterMm: d, pitchMm: p })
  }
  const d2 = d - 0.649519 * p
  const d3 = d - rootPitches[system] * p
  const d0 = (d2 + d3) / 2
  return done({
    system,
    diameter,
    pitch,
    pitchDiameter: millimetres(d2),
    rootDiameter: millimetres(d3),
    stressDiameter: millimetres(d0),
    stressAreaMm2: (Math.PI / 4) * d0 ** 2,
  })
}

/** `M10×1.5`, `3/8-16 UNC`: the pitch is always named, so that nobody need know which one is coarse. */
export function formatThread({
  system,
  diameter,
  pitch,
}: Pick<Thread, 'system' | 'diameter' | 'pitch'>): string {
  const named = system === 'unified' ? unifiedName(diameter, pitch) : null
  return named ?? `M${inMillimetres(diameter)}×${inMillimetres(pitch)}`
}
