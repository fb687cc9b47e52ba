import { lengthAmount, nanometres, type Length } from '../../quantity/index.ts'
import type { EngineSpec, Measure } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'
import { auditPair, lengthsAs } from '../bearings/limits.ts'

/**
 * Ring end gaps as parts of the bore, so wide apart that only a slip of the decimal point or of the unit lies outside: no
 * standard gives a rule for all rings.
 */
const ringGapOfBore = { least: 0.0015, most: 0.03 } as const

/** What is measured: limits that agree with themselves, places that are told apart, ring gaps that stay open. */
export function auditMeasures(spec: EngineSpec): readonly Finding[] {
  return spec.steps.flatMap((step, at) =>
    step.kind === 'measure-limits'
      ? step.measures.flatMap((measure, index) => [
          ...auditLimitsOf(measure, `steps[${at}].measures[${index}]`),
          ...auditPlaces(measure, step.measures.slice(0, index), `steps[${at}].measures[${index}]`),
          ...(measure.what === 'ring-gap'
            ? auditRingGap(spec.case.bore, measure, `steps[${at}].measures[${index}]`)
            : []),
        ])
      : [],
  )
}

export function auditLimitsOf(measure: Measure, path: string): readonly Finding[] {
  const { name, service } = measure
  const place = { code: 'measureCalled', facts: { name } } as const
  const own = auditPair(place, `${path}.new`, measure.new, lengthsAs(measure.new))
  if (service === undefined) return own
  const narrower =
    (service.most !== undefined && measure.new.most !== undefined && service.most < measure.new.most) ||
    (service.least !== undefined && measure.new.least !== undefined && service.least > measure.new.least)
  return [
    ...own,
    ...auditPair(place, `${path}.service`, service, lengthsAs(service)),
    ...(narrower ? [fault('service-limits-narrower', { name }, `${path}.service`)] : []),
  ]
}

function auditPlaces(
  { id, name, at }: Measure,
  before: readonly Measure[],
  path: string,
): readonly Finding[] {
  const twice = at.find(({ key }, index) => at.findIndex((each) => each.key === key) < index)
  return [
    ...(twice === undefined
      ? []
      : [fault('measured-place-twice', { name, place: twice.text }, `${path}.at`)]),
    ...(before.some((each) => each.id === id) ? [fault('measure-twice', { name, id }, path)] : []),
  ]
}

/** A ring whose ends meet when it is hot breaks, or tears its bore: a least gap above zero, in proportion to the bore. */
export function auditRingGap(bore: Length, measure: Measure, path: string): readonly Finding[] {
  const { name } = measure
  const { least, most } = measure.new
  if (least === undefined || least <= 0) return [fault('ring-gap-may-close', { name }, `${path}.new`)]
  const bound = (share: number) => nanometres(Math.round(bore * share))
  const [tight, wide] = [bound(ringGapOfBore.least), bound(ringGapOfBore.most)]
  if (least >= tight && (most === undefined || most <= wide)) return []
  const facts = {
    ...{ name, bore: lengthAmount(bore, 'mm') },
    ...{ least: lengthAmount(tight, 'mm', 2), most: lengthAmount(wide, 'mm', 2) },
  }
  return [doubt('ring-gap-unusual', facts, `${path}.new`)]
}
