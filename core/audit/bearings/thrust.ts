import { thrustPairs, washerFor } from '../../bearing/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import type { Span } from '../../words/index.ts'
import { difference, half, lengthAmount, sum, type Length } from '../../quantity/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/** Thrust washers: all of them by a table or all by their thickness, and of those no two alike and no step too wide. */
export function auditThrust({ endFloat }: EngineSpec): readonly Finding[] {
  if (endFloat === undefined) return []
  const { washers, mixed } = endFloat
  const isTabled = washers.some(({ floatFrom, floatTo }) => floatFrom !== undefined || floatTo !== undefined)
  if (!isTabled) return [...auditThicknesses(endFloat), ...auditSteps(endFloat)]
  return [
    ...washers.flatMap(({ name, floatFrom, floatTo }, index) =>
      floatFrom === undefined || floatTo === undefined
        ? [fault('washers-half-tabled', { washer: name.text }, `endFloat.washers[${index}]`)]
        : [],
    ),
    ...(mixed === true ? [fault('washers-mixed-tabled', {}, 'endFloat.mixed')] : []),
    ...auditTable(endFloat),
  ]
}

type EndFloat = NonNullable<EngineSpec['endFloat']>

/**
 * The rows of a table against the thicknesses they name. The floats of a table are measured with the washers that it gives for a
 * float in the middle of the limits: any other pair changes the float by twice what it is thicker.
 */
function auditTable(endFloat: EndFloat): readonly Finding[] {
  const { washers, least, most } = endFloat
  const rows = washers.flatMap((washer, index) =>
    washer.floatFrom === undefined || washer.floatTo === undefined
      ? []
      : [{ ...washer, from: washer.floatFrom, to: washer.floatTo, index }],
  )
  const supposed = washerFor(endFloat, half(sum(least, most)))
  if (!supposed.ok) return []
  const measuredWith = supposed.value
  return rows.flatMap(({ name, thickness, from, to, index }) => {
    const thicker = difference(thickness, measuredWith.thickness)
    const leaves = (float: Length) => difference(float, sum(thicker, thicker))
    if (leaves(from) >= least && leaves(to) <= most) return []
    const facts = {
      washer: name.text,
      standard: measuredWith.name.text,
      floats: lengthSpan(from, to),
      leaves: lengthSpan(leaves(from), leaves(to)),
      limits: lengthSpan(least, most),
    }
    return [doubt('washer-misses-limits', facts, `endFloat.washers[${index}]`)]
  })
}

function lengthSpan(from: Length, upTo: Length): Span {
  return { from: lengthAmount(from, 'mm'), upTo: lengthAmount(upTo, 'mm') }
}

function auditThicknesses({ washers }: EndFloat): readonly Finding[] {
  return washers.flatMap((second, index) => {
    const first = washers.slice(0, index).find(({ thickness }) => thickness === second.thickness)
    if (first === undefined) return []
    const facts = {
      ...{ first: first.name.text, second: second.name.text },
      thickness: lengthAmount(second.thickness, 'mm'),
    }
    return [fault('washer-thickness-twice', facts, `endFloat.washers[${index}].thickness`)]
  })
}

/** The pairs by what they are together: from one to the next the float may not jump over its limits. */
function auditSteps(endFloat: EndFloat): readonly Finding[] {
  const together = thrustPairs(endFloat)
    .map(({ first, second }) => sum(first.thickness, second.thickness))
    .toSorted((one, other) => one - other)
  const range = difference(endFloat.most, endFloat.least)
  const steps = together.slice(1).map((thicker, index) => difference(thicker, together[index]!))
  const wide = steps.find((step) => range >= 0 && step > range)
  if (wide === undefined) return []
  return [
    doubt(
      'washer-steps-wide',
      { step: lengthAmount(wide, 'mm'), range: lengthAmount(range, 'mm') },
      'endFloat.washers',
    ),
  ]
}
