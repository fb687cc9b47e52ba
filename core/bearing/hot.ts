import type { Fit } from '../engine/index.ts'
import { done, refused, type Outcome } from '../problem/index.ts'
import type { Temperature } from '../quantity/index.ts'
import { oilClearance, type Clearance, type Range } from './clearance.ts'
import type { Half, Sizes } from './choice/pairs.ts'
import { sensibleTemperature, rangeAtTemperature } from './sizes/thermal.ts'

/**
 * The clearance with bore, journal and shells all at one temperature, the spec's oil temperature unless given: each grows
 * by its own material. In a light-alloy case it opens, because the case grows more than the crank.
 *
 * Refuses `expansion-unknown` where the spec names no materials, `temperature-not-sensible`.
 */
export function hotClearance(
  fit: Fit,
  place: string,
  walls: Readonly<Record<Half, Range>>,
  sizes: Sizes,
  temperature?: Temperature,
): Outcome<Clearance> {
  if (fit.warm === undefined) return refused('expansion-unknown', { place })
  const hot = sensibleTemperature(temperature ?? fit.warm.oilTemperature, 'oil')
  if (!hot.ok) return hot
  const { housingExpansion, journalExpansion, shellExpansion } = fit.warm
  const at = (expansion: number) => ({ expansion, temperature: hot.value })
  return done(
    oilClearance(
      rangeAtTemperature(sizes.bore, at(housingExpansion)),
      rangeAtTemperature(sizes.journal, at(journalExpansion)),
      rangeAtTemperature(walls.upper, at(shellExpansion)),
      rangeAtTemperature(walls.lower, at(shellExpansion)),
    ),
  )
}
