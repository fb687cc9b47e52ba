import {
  ringMeasures,
  type EngineSpec,
  type Measure,
  type Ring,
  type RingSet,
  type Step,
} from '../../engine/index.ts'
import type { Length } from '../../quantity/index.ts'

/** A step in which readings are held against limits: those of the spec, or those of a set of rings in its bores. */
export type MeasureStep = Extract<Step, { kind: 'measure-limits' | 'measure-rings' }>

/** Something that is measured; with the ring and the bore it is in, where it belongs to one. */
export interface StepMeasure extends Measure {
  readonly ring?: Ring
  readonly bore?: Length
}

/** Throws when the spec has no such set: reading it finds that. */
export function ringSetOf({ ringSets }: EngineSpec, id: string): RingSet {
  const set = ringSets.find((each) => each.id === id)
  if (set === undefined) throw new Error(`the spec has no ring set ${id}`)
  return set
}

/** Everything that the step measures, in its order. */
export function measuresIn(spec: EngineSpec, step: MeasureStep): readonly StepMeasure[] {
  return step.kind === 'measure-limits'
    ? step.measures
    : ringMeasures(ringSetOf(spec, step.rings), spec.case.bore)
}

export function isMeasured(step: Step): step is MeasureStep {
  return step.kind === 'measure-limits' || step.kind === 'measure-rings'
}

/** What a place is called that an entry names; as the entry has it where the spec has none such. */
export function placeIn(
  spec: EngineSpec,
  { step: id, measure, at }: { readonly step: string; readonly measure: string; readonly at: string },
): string {
  const step = spec.steps.find((each) => each.id === id)
  const measures = step !== undefined && isMeasured(step) ? measuresIn(spec, step) : []
  const places = measures.find((each) => each.id === measure)?.at ?? []
  return places.find(({ key }) => key === at)?.text ?? at
}
