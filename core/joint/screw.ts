import { inMillimetres, newtonMetres, newtons, type Force, type Torque } from '../quantity/index.ts'
import { frictionDiameterMm, type BearingFace } from './bearing-face.ts'
import type { Thread } from './thread.ts'

/** Coefficients of friction in the thread (µ_G) and under the head or nut (µ_K): from about 0.04 to 0.35, never below zero. */
export type Friction = { readonly thread: number; readonly head: number }

/** All that decides what a torque does: thread, bearing face, and the friction in both. */
export type Screw = { readonly thread: Thread; readonly bearing: BearingFace; readonly friction: Friction }

/** Where a torque goes: only what climbs the pitch clamps the joint, the rest is friction. The three add up to the torque. */
export type TorqueSplit = { readonly pitch: Torque; readonly thread: Torque; readonly head: Torque }

/**
 * The torque in N·mm that each newton of preload costs, by where it goes: M/F = 0.16·P + 0.58·d2·µ_G + D_Km/2·µ_K
 * (VDI 2230 part 1, ISO 16047; 0.16 stands for 1/2π and 0.58 for 1/(2·cos 30°), as printed there).
 */
function leversMm({ thread, bearing, friction }: Screw) {
  return {
    pitch: 0.16 * inMillimetres(thread.pitch),
    thread: 0.58 * inMillimetres(thread.pitchDiameter) * friction.thread,
    head: (frictionDiameterMm(bearing) / 2) * friction.head,
  }
}

function leverMm(screw: Screw): number {
  const { pitch, thread, head } = leversMm(screw)
  return pitch + thread + head
}

/** The preload that a torque gives while the screw is elastic, by the formula of VDI 2230 and ISO 16047. */
export function preloadFromTorque(screw: Screw, torque: Torque): Force {
  return newtons((torque * 1000) / leverMm(screw))
}

/** The shares of a torque, by the same formula. With common friction between a tenth and a sixth climbs the pitch. */
export function torqueSplit(screw: Screw, torque: Torque): TorqueSplit {
  const { pitch, thread, head } = leversMm(screw)
  const share = (lever: number) => newtonMetres((torque * lever) / leverMm(screw))
  return { pitch: share(pitch), thread: share(thread), head: share(head) }
}
