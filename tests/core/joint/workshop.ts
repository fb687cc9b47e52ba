import {
  bearingFace,
  preloadFromTorque,
  threadOf,
  type BearingFace,
  type Screw,
  type Thread,
} from '../../../core/joint/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { inMillimetres, millimetres, newtonMetres, type Torque } from '../../../core/quantity/index.ts'
import { lineOf } from '../../problem-line.ts'

/** The value of an outcome that a test knows to be good. */
export function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(lineOf(outcome.problem))
  return outcome.value
}

export function thread(diameterMm: number, pitchMm: number): Thread {
  return valueOf(threadOf(millimetres(diameterMm), millimetres(pitchMm)))
}

export function face(outerMm: number, holeMm: number): BearingFace {
  return valueOf(bearingFace(millimetres(outerMm), millimetres(holeMm)))
}

/** The hexagon bolts of these tests, with d_w of ISO 4014 and the medium holes of ISO 273. */
export const m6 = { thread: thread(6, 1), bearing: face(8.88, 6.6) }
export const m8 = { thread: thread(8, 1.25), bearing: face(11.63, 9) }
export const m10 = { thread: thread(10, 1.5), bearing: face(14.63, 11) }

/** The torque for a preload of so many newtons: preload is in proportion to torque. */
export function torqueFor(screw: Screw, preload: number): Torque {
  return newtonMetres(preload / preloadFromTorque(screw, newtonMetres(1)))
}

/** K of M = K·d·F, a pure number, about 0.2 for dry steel (Machinery's Handbook, "torque-tension"). */
export function nutFactor(screw: Screw): number {
  return (torqueFor(screw, 1) * 1000) / inMillimetres(screw.thread.diameter)
}
