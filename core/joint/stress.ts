import { inMillimetres, newtons, type Force } from '../quantity/index.ts'
import type { Strength } from './property-class.ts'
import type { Thread } from './thread.ts'

/** Stresses in the thread of a screw that is being pulled, in MPa. */
export type TighteningStress = {
  readonly tensionMpa: number
  readonly torsionMpa: number
  /** Both together, after von Mises: what is compared with the yield point. */
  readonly equivalentMpa: number
}

/**
 * Torsion per tension: 3/2·(d2/d0)·(P/(π·d2) + 1.155·µ_G). The factor 3/2 is that of a section which twists plastically
 * right through (VDI 2230 part 1 since 2001; tables before that have 2, and must not be mixed with these).
 */
function torsionPerTension(thread: Thread, threadFriction: number): number {
  const d2 = inMillimetres(thread.pitchDiameter)
  const rise = inMillimetres(thread.pitch) / (Math.PI * d2)
  return 1.5 * (d2 / inMillimetres(thread.stressDiameter)) * (rise + 1.155 * threadFriction)
}

/** The stresses at a preload while the wrench is still turning (VDI 2230 part 1). The torsion eases when it lets go. */
export function tighteningStress(thread: Thread, preload: Force, threadFriction: number): TighteningStress {
  const tensionMpa = preload / thread.stressAreaMm2
  const torsionMpa = tensionMpa * torsionPerTension(thread, threadFriction)
  return { tensionMpa, torsionMpa, equivalentMpa: Math.hypot(tensionMpa, Math.sqrt(3) * torsionMpa) }
}

/** The share of the yield point that VDI 2230 lets tightening use up. */
const usualUtilisation = 0.9

/**
 * The preload at which tension and torsion together use up a share of the yield point while tightening:
 * F = ν·R_p0.2·A_s / √(1 + 3·[3/2·(d2/d0)·(P/(π·d2) + 1.155·µ_G)]²) (VDI 2230 part 1, 2001 and later).
 *
 * `utilisation` ν is above 0 and at most 1; 1 is where the thread begins to yield.
 */
export function assemblyPreload(
  thread: Thread,
  { yieldMpa }: Strength,
  threadFriction: number,
  utilisation = usualUtilisation,
): Force {
  const torsion = torsionPerTension(thread, threadFriction)
  return newtons((utilisation * yieldMpa * thread.stressAreaMm2) / Math.sqrt(1 + 3 * torsion ** 2))
}
