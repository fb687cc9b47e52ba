import { lengthAmount } from '../quantity/index.ts'
import type { EngineSpec } from '../engine/index.ts'
import { doubt, fault, type Finding } from './finding.ts'

/** In nanometres. Shells are made to 1.5 mm undersize (0.060 in) and hardly further. Common practice, no source. */
const largestUndersize = 2_000_000

/** Undersizes of reground journals: each once, under one name, and of a size that is ground. */
export function auditUndersizes({ fits }: EngineSpec): readonly Finding[] {
  return fits.flatMap((fit, index) =>
    fit.undersizes.flatMap(({ name, undersize }, k) => {
      const path = `fits[${index}].undersizes[${k}]`
      const facts = { fit: fit.name, name, undersize: lengthAmount(undersize, 'mm', 2) }
      const earlier = fit.undersizes.slice(0, k)
      const repeated = earlier.some((each) => each.undersize === undersize || each.name === name)
      return [
        ...(repeated ? [fault('undersize-twice', facts, path)] : []),
        ...(undersize > largestUndersize ? [doubt('undersize-large', facts, `${path}.undersize`)] : []),
      ]
    }),
  )
}
