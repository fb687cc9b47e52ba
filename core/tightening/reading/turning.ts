import { done, refused, type Outcome } from '../../problem/index.ts'
import {
  inMillimetres,
  newtonMetres,
  parseForce,
  parseLength,
  readTorque,
  torqueIn,
  torqueOf,
  type Torque,
  type TorqueUnit,
} from '../../quantity/index.ts'
import type { TurningTorque } from '../../engine/index.ts'
import type { Reading } from '../run/events.ts'

/** `40 N × 250 mm`, `9 lbf x 10 in`: a spring balance on a lever. */
const byBalance = /^(.+?)\s*[×xX]\s*(\d.*)$/s

/**
 * What it takes to turn the crank, as it is typed: a torque, or the force of a spring balance with the arm of the lever it pulls,
 * `40 N × 250 mm`. The balance is held square to the lever and read while the crank turns: torque = force × arm.
 *
 * Refuses what `readTorque`, `parseForce` and `parseLength` refuse, and `arm-not-above-zero`.
 */
export function readTurning(
  typed: string,
  unit: TorqueUnit,
): Outcome<{ readonly reading: Reading; readonly torque: Torque }> {
  const [, force, arm] = byBalance.exec(typed.trim()) ?? []
  if (force === undefined || arm === undefined) {
    const torque = readTorque(typed, unit)
    if (!torque.ok) return torque
    const { amount, unit: read } = torque.value
    return done({ reading: { typed, value: amount, unit: read }, torque: torqueOf(amount, read) })
  }
  const pulled = parseForce(force)
  if (!pulled.ok) return pulled
  const length = parseLength(arm)
  if (!length.ok) return length
  if (length.value <= 0) return refused('arm-not-above-zero', { typed: arm })
  const torque = newtonMetres((pulled.value * inMillimetres(length.value)) / 1000)
  return done({ reading: { typed, value: torqueIn(torque, unit), unit }, torque })
}

/** Left to binary rounding, as a share of the limit. */
const slack = 1e-9

/**
 * A turning torque against its limits, and its rise against the most that it may rise. `rise` is null where nothing was read
 * before; a fall is below any most.
 */
export function verdictOfTurning(
  { least, most, mostRise }: TurningTorque,
  torque: Torque,
  rise: Torque | null,
): 'within' | 'under' | 'over' {
  if (most !== null && torque > most * (1 + slack)) return 'over'
  if (isJump(mostRise, rise)) return 'over'
  return least !== null && torque < least * (1 - slack) ? 'under' : 'within'
}

/** Whether a turning torque has risen more than it may. */
export function isJump(mostRise: Torque | null, rise: Torque | null): boolean {
  return mostRise !== null && rise !== null && rise > mostRise * (1 + slack)
}
