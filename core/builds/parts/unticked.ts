import type { EngineSpec, Step } from '../../engine/index.ts'
import type { BuildState } from '../events/state.ts'
import { isSkipped, isStepDone } from '../steps/steps.ts'
import { usesAt, type PartUse } from './part-uses.ts'

/**
 * The parts of a step whose work is done that nobody ticked and nobody said the place of: they are asked for there, while they can still be
 * seen, and not first by the count. A step that fits a part asks for them before it is done.
 */
export function untickedAfter(spec: EngineSpec, state: BuildState, step: Step): readonly PartUse[] {
  if (step.kind === 'fit-part' || state.finished || state.voided) return []
  if (isSkipped(state, step) || !isStepDone(spec, state, step)) return []
  return usesAt(spec, state, step.id).filter(({ left, leftOver }) => left > 0 && leftOver === null)
}
