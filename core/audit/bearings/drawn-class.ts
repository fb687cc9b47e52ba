import type { Span } from '../../words/index.ts'
import { classesWith, difference, lengthAmount, type Length } from '../../quantity/index.ts'
import type { EngineSpec, Fit, MarkedPart } from '../../engine/index.ts'
import { hull } from '../../bearing/index.ts'
import { partOfFit } from './bands.ts'
import { lengthUnitOf } from '../entered-unit.ts'
import { doubt, type Finding } from '../finding.ts'

/** Bands of marks against the tolerance class that the drawing names for all of them together (ISO 286). */
export function auditDrawn({ fits }: EngineSpec): readonly Finding[] {
  return fits.flatMap((fit, index) => [
    ...auditPart(fit, fit.housing, `fits[${index}].housing`),
    ...auditPart(fit, fit.journal, `fits[${index}].journal`),
  ])
}

function auditPart(fit: Fit, part: MarkedPart, path: string): readonly Finding[] {
  const { marks, drawn } = part
  const bands = hull(marks.map(({ band }) => band))
  if (drawn === undefined || bands === null) return []
  if (bands.least === drawn.least && bands.most === drawn.most) return []
  const facts = {
    place: partOfFit(fit, part, null),
    drawn: drawn.name,
    limits: rangeOf(drawn),
    bands: rangeOf(bands),
    width: lengthAmount(difference(bands.most, bands.least), 'µm', 1),
    classes: classesWith(drawn.nominal, bands),
  }
  return [doubt('bands-not-as-drawn', facts, `${path}.drawn`)]
}

function rangeOf({ least, most }: { readonly least: Length; readonly most: Length }): Span {
  const unit = lengthUnitOf([least, most])
  return { from: lengthAmount(least, unit), upTo: lengthAmount(most, unit) }
}
