import { classesWith, difference, formatLength, type Length } from '../quantity/index.ts'
import type { EngineSpec, Fit, MarkedPart } from '../engine/index.ts'
import { hull } from '../bearing/index.ts'
import { lengthUnitOf } from './entered.ts'
import { doubt, type Finding } from './finding.ts'

/** Bands of marks against the tolerance class that the drawing names for all of them together (ISO 286). */
export function auditDrawn({ fits }: EngineSpec): readonly Finding[] {
  return fits.flatMap((fit, index) => [
    ...auditPart(fit, fit.housing, `fits[${index}].housing`),
    ...auditPart(fit, fit.journal, `fits[${index}].journal`),
  ])
}

function auditPart(fit: Fit, { name, marks, drawn }: MarkedPart, path: string): readonly Finding[] {
  const bands = hull(marks.map(({ band }) => band))
  if (drawn === undefined || bands === null) return []
  if (bands.least === drawn.least && bands.most === drawn.most) return []
  const facts = {
    place: `${fit.name}, ${name}`,
    drawn: drawn.name,
    limits: rangeOf(drawn),
    bands: rangeOf(bands),
    width: formatLength(difference(bands.most, bands.least), 'µm', 1),
    classes: classesWith(drawn.nominal, bands),
  }
  return [doubt('bands-not-as-drawn', facts, `${path}.drawn`)]
}

function rangeOf({ least, most }: { readonly least: Length; readonly most: Length }): string {
  const unit = lengthUnitOf([least, most])
  return `${formatLength(least, unit)} to ${formatLength(most, unit)}`
}
