import { done, refused, type Outcome } from '../../problem/index.ts'
import { difference, lengthAmount, nanometres, sum, type Length } from '../../quantity/index.ts'
import { rangeSpan, type Range } from '../clearance.ts'

/**
 * The limits within which a reading proves that a size is inside, the readings being sure to ± `uncertainty`: the limits
 * drawn in by it at both ends, still included (ISO 14253-1, proof of conformity; ASME B89.7.3.1, stringent acceptance).
 *
 * Refuses `gauge-too-coarse` where nothing is left between them.
 */
export function guardedLimits(limits: Range, uncertainty: Length): Outcome<Range> {
  const least = sum(limits.least, uncertainty)
  const most = difference(limits.most, uncertainty)
  if (least <= most) return done({ least, most })
  return refused('gauge-too-coarse', {
    limits: rangeSpan(limits),
    uncertainty: lengthAmount(uncertainty, 'µm'),
  })
}

/** The limits drawn in as `guardedLimits` does, also past one another, where nothing is proved inside. */
export function drawnIn<Limits extends Range>(limits: Limits, uncertainty: Length): Limits {
  return { ...limits, least: sum(limits.least, uncertainty), most: difference(limits.most, uncertainty) }
}

/**
 * The uncertainty of a clearance from those of the bore, the journal and the walls it is made of: the root of the sum of
 * their squares (ISO/IEC Guide 98-3, 5.1, sizes measured independently). Rounded up to the nanometre.
 */
export function combinedUncertainty(...uncertainties: readonly Length[]): Length {
  return nanometres(Math.ceil(Math.hypot(...uncertainties)))
}
