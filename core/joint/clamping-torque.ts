import { newtonMetres, type Torque } from '../quantity/index.ts'
import type { FastenedJoint } from './fastened.ts'

/** What is left of a torque to clamp with: the prevailing torque of a locking nut or insert goes off it first (ISO 2320). */
export function clampingTorque({ prevailing }: Pick<FastenedJoint, 'prevailing'>, torque: Torque): Torque {
  return newtonMetres(Math.max(0, torque - prevailing))
}
