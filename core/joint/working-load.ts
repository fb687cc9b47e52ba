import { newtons, type Force } from '../quantity/index.ts'
import type { FastenedJoint } from './fastened.ts'
import type { OpenSpread } from './torque-effect.ts'

/** A load that pulls the clamped parts apart along the fastener while the engine runs. */
export interface WorkingLoad {
  readonly force: Force
  /** n of VDI 2230: from 0, where the load comes in at the joint face, to 1, where it comes in under the head. */
  readonly introduction: number
}

/** What a working load does to a fastener that is tightened. */
export interface WorkingLoadEffect {
  readonly force: Force
  /** Φ: the share of the load that the fastener feels, 0 to 1. */
  readonly loadFactor: number
  /** Φ·F_A, on top of the preload. */
  readonly onFastener: Force
  /** What still clamps the parts, from the least preload and from the usual one; never below nothing. */
  readonly clampLeft: { readonly least: Force; readonly usual: Force }
  /** The load at which the parts part, from the least preload and from the usual one. */
  readonly opensAt: { readonly least: Force; readonly usual: Force }
  /** Whether the joint opens under the load: with any preload that the tightening may leave, with the least only, or with none. */
  readonly opens: 'never' | 'at-least-preload' | 'at-usual-preload'
}

/**
 * Φ = n·δ_P/(δ_S + δ_P); the fastener gets F_V + Φ·F_A, the parts keep F_V − (1 − Φ)·F_A, and open at F_V/(1 − Φ) (VDI 2230 part 1,
 * 3.2 and 5.3.1, centred joint and load; Shigley's Mechanical Engineering Design, 8-7, for n = 1). What the joint settles by after it was
 * tightened is left out.
 */
export function workingLoadEffect(
  { boltMmPerN, clampedMmPerN }: Pick<FastenedJoint, 'boltMmPerN' | 'clampedMmPerN'>,
  preload: Pick<OpenSpread<Force>, 'least' | 'usual'>,
  { force, introduction }: WorkingLoad,
): WorkingLoadEffect {
  const loadFactor = (introduction * clampedMmPerN) / (boltMmPerN + clampedMmPerN)
  const unloaded = (1 - loadFactor) * force
  const left = (from: Force) => newtons(Math.max(0, from - unloaded))
  const opensFrom = (from: Force) => newtons(from / (1 - loadFactor))
  const clampLeft = { least: left(preload.least), usual: left(preload.usual) }
  return {
    force,
    loadFactor,
    onFastener: newtons(loadFactor * force),
    clampLeft,
    opensAt: { least: opensFrom(preload.least), usual: opensFrom(preload.usual) },
    opens: clampLeft.usual === 0 ? 'at-usual-preload' : clampLeft.least === 0 ? 'at-least-preload' : 'never',
  }
}
