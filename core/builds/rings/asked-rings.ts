import type { EngineSpec, RingPiston, RingSet, Step } from '../../engine/index.ts'
import { pistonKey, type RingsFitted } from '../events/ring-record.ts'
import type { BuildState } from '../events/state.ts'
import { ringSetOf } from '../limits/measures-in.ts'
import { rememberedAt } from '../steps/remembered-at.ts'

type RingStep = Extract<Step, { kind: 'fit-rings' }>

/** One piston that gets its rings in a step. */
export interface AskedRings {
  readonly set: RingSet
  readonly piston: RingPiston
  /** Null while its rings are not on. */
  readonly fitted: RingsFitted | null
}

/** Every piston of the step, in the order of the spec. */
export function askedRings(
  spec: EngineSpec,
  { rings }: Pick<BuildState, 'rings'>,
  step: RingStep,
): readonly AskedRings[] {
  return asked(spec, rings, step)
}

const asked = rememberedAt((spec, rings: BuildState['rings'], step: RingStep): readonly AskedRings[] => {
  const set = ringSetOf(spec, step.rings)
  return set.pistons.map((piston) => ({
    ...{ set, piston },
    fitted: rings[pistonKey({ step: step.id, cylinder: piston.cylinder })] ?? null,
  }))
})

/** What the piston of a step is called; its cylinder where the spec has none. */
export function pistonIn(
  { steps, ringSets }: EngineSpec,
  { step: id, cylinder }: { readonly step: string; readonly cylinder: number },
): string {
  const step = steps.find((each) => each.id === id)
  const set = step?.kind === 'fit-rings' ? ringSets.find((each) => each.id === step.rings) : undefined
  return set?.pistons.find((piston) => piston.cylinder === cylinder)?.name.text ?? String(cylinder)
}
