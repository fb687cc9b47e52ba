import { degrees, inMillimetres, newtons, type Angle, type Force } from '../quantity/index.ts'
import type { Thread } from './thread.ts'

/** What a screw holds after a turn. A yielding screw holds what it began to yield at, however far it is turned. */
export type PreloadAfterTurn =
  | { readonly state: 'elastic'; readonly preload: Force }
  | { readonly state: 'yielding'; readonly preload: Force }

/**
 * What a turn adds to the preload of an elastic joint: ΔF = θ/360° · P/(δ_S + δ_P) (VDI 2230 part 1).
 *
 * `resilienceMmPerN` is that of bolt and clamped parts together, above zero. The turn counts from where the faces have
 * come to lie on each other, which is why a torque goes before it: up to there a turn gives less.
 */
export function preloadGain(thread: Thread, turn: Angle, resilienceMmPerN: number): Force {
  return newtons(((turn / 360) * inMillimetres(thread.pitch)) / resilienceMmPerN)
}

/** The turn that adds so much to the preload of an elastic joint; the inverse of `preloadGain`. */
export function turnForPreload(thread: Thread, gain: Force, resilienceMmPerN: number): Angle {
  return degrees((360 * gain * resilienceMmPerN) / inMillimetres(thread.pitch))
}

/**
 * The preload after a turn from a snug preload on. `yieldLoad` is where the screw begins to yield while it is turned:
 * `assemblyPreload` with a utilisation of 1. What the steel gains by hardening past there, some few per cent, is left out.
 */
export function preloadAfterTurn(
  joint: { readonly thread: Thread; readonly resilienceMmPerN: number; readonly yieldLoad: Force },
  snug: Force,
  turn: Angle,
): PreloadAfterTurn {
  const elastic = newtons(snug + preloadGain(joint.thread, turn, joint.resilienceMmPerN))
  return elastic < joint.yieldLoad
    ? { state: 'elastic', preload: elastic }
    : { state: 'yielding', preload: joint.yieldLoad }
}
