import type { Fit } from '../engine/index.ts'
import { half, sum, type Length } from '../quantity/index.ts'
import type { Range } from './clearance.ts'

/**
 * How a range of possible clearances lies to the limits, which are themselves allowed. `tight` and `loose`: all of it is
 * outside. `may-be-…`: some of it is.
 */
export type Verdict = 'inside' | 'may-be-tight' | 'may-be-loose' | 'may-be-either' | 'tight' | 'loose'

export function againstLimits(range: Range, limits: Range): Verdict {
  if (range.most < limits.least) return 'tight'
  if (range.least > limits.most) return 'loose'
  const mayBeTight = range.least < limits.least
  const mayBeLoose = range.most > limits.most
  if (mayBeTight && mayBeLoose) return 'may-be-either'
  if (mayBeTight) return 'may-be-tight'
  return mayBeLoose ? 'may-be-loose' : 'inside'
}

/** The clearance to aim at: the spec's target, or the middle of its limits. */
export function targetOf(fit: Fit): Length {
  return fit.clearance.target ?? half(sum(fit.clearance.least, fit.clearance.most))
}

/** How clearances lie to the limit up to which a used bearing may run on, itself allowed. */
export type Wear = 'within-service' | 'may-be-beyond' | 'beyond-service'

/** Null where the spec sets no service limit. */
export function againstServiceLimit(range: Range, fit: Fit): Wear | null {
  const limit = fit.clearance.serviceLimit
  if (limit === undefined) return null
  if (range.most <= limit) return 'within-service'
  return range.least > limit ? 'beyond-service' : 'may-be-beyond'
}
