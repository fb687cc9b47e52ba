import type { EngineSpec, Step } from '../../engine/index.ts'
import { torqueOf, type Torque } from '../../quantity/index.ts'
import { isTorqueUnit, lastTurning, type Reading } from '../../tightening/index.ts'
import type { BuildState } from '../events/state.ts'
import { stepsBefore } from './steps.ts'

/** What the crank took to turn when it was last read in the steps before one; null where it was not. */
export function turnedBefore(spec: EngineSpec, state: BuildState, step: Step): Torque | null {
  const read = stepsBefore(spec, step).map((each) => {
    if (each.kind === 'turn') return torqueIn(state.turnings[each.id]?.reading ?? null)
    return each.kind === 'run-procedure' ? lastTurning(state.runs[each.procedure]) : null
  })
  return read.findLast((torque) => torque !== null) ?? null
}

function torqueIn(reading: Reading | null): Torque | null {
  return reading !== null && isTorqueUnit(reading.unit) ? torqueOf(reading.value, reading.unit) : null
}
