import { newtonMetres, torqueOf, type Torque } from '../../quantity/index.ts'
import { isTorqueUnit } from '../reading/reading.ts'
import { counts } from './plan.ts'
import type { Pull, Run } from './run.ts'

/** What the crank took to turn; null for any other pull. */
export function turningTorque({ turning, reading }: Pull): Torque | null {
  if (turning === null || reading === null || !isTorqueUnit(reading.unit)) return null
  return torqueOf(reading.value, reading.unit)
}

/** The last turning torque of a run that counts, of pulls before a number; null where there is none. */
export function lastTurning(run: Run | undefined, before = Infinity): Torque | null {
  const pull = run?.pulls.findLast(
    (each) => each.number < before && counts(each) && turningTorque(each) !== null,
  )
  return pull === undefined ? null : turningTorque(pull)
}

/** By how much a turning torque has risen since the last one; null where there was none. */
export function riseOf(torque: Torque, last: Torque | null): Torque | null {
  return last === null ? null : newtonMetres(torque - last)
}

/**
 * The cap to look at when the crank takes too much: the one after which its torque rose most, of all that count. Null where no
 * rise is known, or the procedure does not go cap by cap.
 */
export function capToLookAt(run: Run): string | null {
  const rises = run.pulls.flatMap((pull) =>
    counts(pull) && pull.cap !== null && pull.turning !== null && pull.turning.rise !== null
      ? [{ cap: pull.cap, rise: pull.turning.rise }]
      : [],
  )
  return rises.toSorted((one, other) => other.rise - one.rise)[0]?.cap ?? null
}
