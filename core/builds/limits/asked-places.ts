import type { EngineSpec, Limits, Measure } from '../../engine/index.ts'
import type { Length } from '../../quantity/index.ts'
import { placeKey, type LimitReading } from '../events/limit-record.ts'
import type { BuildState } from '../events/state.ts'
import { rememberedAt } from '../steps/remembered-at.ts'
import { measuresIn, type MeasureStep, type StepMeasure } from './measures-in.ts'

/** One place that a step has measured. */
export interface AskedPlace {
  readonly measure: StepMeasure
  /** As entries have it. */
  readonly at: string
  /** As it is called. */
  readonly place: string
  /** Null while nothing was measured there, or since its part was replaced. */
  readonly measured: LimitReading | null
  /** Whether nothing more is asked there. */
  readonly settled: boolean
}

/** Every place that the step measures, in the order of the spec. */
export function askedPlaces(
  spec: EngineSpec,
  { limits }: Pick<BuildState, 'limits'>,
  step: MeasureStep,
): readonly AskedPlace[] {
  return asked(spec, limits, step)
}

const asked = rememberedAt((spec, limits: BuildState['limits'], step: MeasureStep): readonly AskedPlace[] =>
  measuresIn(spec, step).flatMap((measure) =>
    measure.at.map(({ key: at, text: place }) => {
      const measured = limits[placeKey({ step: step.id, measure: measure.id, at })] ?? null
      const settled = measured !== null && (measured.verdict !== 'outside' || measured.accepted !== null)
      return { measure, at, place, measured, settled }
    }),
  ),
)

/** The limits of a used part: a bound that the spec leaves out is that of a new one. Null where it has none of its own. */
export function serviceLimits(measure: Measure): Limits | null {
  return measure.service === undefined ? null : { ...measure.new, ...measure.service }
}

/** Bounds are themselves allowed. */
export function judgeLimits(measure: Measure, length: Length): 'new' | 'service' | 'outside' {
  if (isWithin(measure.new, length)) return 'new'
  const service = serviceLimits(measure)
  return service !== null && isWithin(service, length) ? 'service' : 'outside'
}

function isWithin({ least, most }: Limits, length: Length): boolean {
  return (least === undefined || length >= least) && (most === undefined || length <= most)
}
