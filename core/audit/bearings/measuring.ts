import type { EngineSpec, Fit } from '../../engine/index.ts'
import { lengthAmount } from '../../quantity/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/** Where bores and journals are measured, as far as a taper for a length depends on it. */
export function auditMeasuring(spec: EngineSpec): readonly Finding[] {
  return spec.fits.flatMap((fit, index) => {
    const path = `fits[${index}].measuring`
    if (fit.measuring === undefined) return []
    const { taper, taperPer, planesApart, planes } = fit.measuring
    const lacks = taper === undefined || planesApart === undefined || planes < 2
    return [
      ...(taperPer !== undefined && lacks
        ? [fault('taper-length-incomplete', { fit: fit.name }, `${path}.taperPer`)]
        : []),
      ...auditDistance(spec, fit, `${path}.planesApart`),
    ]
  })
}

/** The planes lie within the bearing. */
function auditDistance(spec: EngineSpec, { name, positions, measuring }: Fit, path: string) {
  const { saddles, rods, balanceBearings } = spec.case
  const widths = [...saddles, ...rods, ...balanceBearings].flatMap(({ id, width }) =>
    positions.includes(id) ? [width] : [],
  )
  const apart = measuring?.planesApart
  const narrowestWidth = widths.toSorted((one, other) => one - other)[0]
  if (apart === undefined || narrowestWidth === undefined || apart < narrowestWidth) return []
  const facts = { fit: name, apart: lengthAmount(apart, 'mm'), width: lengthAmount(narrowestWidth, 'mm') }
  return [doubt('planes-beyond-bearing', facts, path)]
}
