import type { EngineSpec, Step } from '../../engine/index.ts'
import type { ShellChoice } from '../events/events.ts'
import { halfKey, type BuildState } from '../events/state.ts'
import { isStepDone, stepsBefore } from '../steps/steps.ts'

/**
 * The chosen shells of a fit in the order in which they are fitted: all upper halves, then all lower ones, because the
 * two parts lie on the bench one after the other.
 */
export function halvesToFit(state: BuildState, fit: string): readonly ShellChoice[] {
  const chosen = state.shells[fit] ?? []
  return (['upper', 'lower'] as const).flatMap((half) => chosen.filter((choice) => choice.half === half))
}

/**
 * The half that a step has fitted next: the one that was tapped, as the drawing names it, while it is not in place; else
 * the first that is not. Null in any other step, while a step before it is not done, and once all are in.
 */
export function nextHalf(
  spec: EngineSpec,
  state: BuildState,
  step: Step,
  picked: string | null,
): ShellChoice | null {
  if (step.kind !== 'fit-shells' || state.voided) return null
  if (!stepsBefore(spec, step).every((before) => isStepDone(spec, state, before))) return null
  const open = halvesToFit(state, step.fit).filter(
    ({ position, half }) => !state.fitted.has(halfKey(position, half)),
  )
  return open.find(({ position, half }) => `half/${halfKey(position, half)}` === picked) ?? open[0] ?? null
}
