import type { Fit } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import {
  celsius,
  temperatureAmount,
  nanometres,
  type Length,
  type Temperature,
} from '../../quantity/index.ts'
import type { Range } from '../clearance.ts'

/** The temperature at which sizes are stated: ISO 1. */
export const reference = celsius(20)

/** A thing that grows with warmth: linear expansion in 10⁻⁶ per kelvin, and how warm it is. */
export interface PartAtTemperature {
  readonly expansion: number
  readonly temperature: Temperature
}

/** Parts and gauges are measured from −10 to +50 °C, both included; oil is taken to be from −40 to +200 °C. */
const sensible = {
  measuring: { least: celsius(-10), most: celsius(50) },
  oil: { least: celsius(-40), most: celsius(200) },
} as const

/** Refuses `temperature-not-sensible`: at 900 °C nobody measures, and no oil runs. */
export function sensibleTemperature(
  temperature: Temperature,
  of: keyof typeof sensible,
): Outcome<Temperature> {
  const { least, most } = sensible[of]
  if (temperature >= least && temperature <= most) return done(temperature)
  return refused('temperature-not-sensible', {
    of,
    temperature: temperatureAmount(temperature),
    least: temperatureAmount(least),
    most: temperatureAmount(most),
  })
}

/**
 * A part of a fit as it lies on the bench. Where the spec names no materials it must be at 20 °C.
 *
 * Refuses `temperature-not-sensible`, `expansion-unknown`.
 */
export function partAtTemperature(
  fit: Fit,
  place: string,
  part: 'housing' | 'journal' | 'shell',
  temperature: Temperature,
): Outcome<PartAtTemperature> {
  const sensible = sensibleTemperature(temperature, 'measuring')
  if (!sensible.ok) return sensible
  if (fit.warm !== undefined) return done({ expansion: fit.warm[`${part}Expansion`], temperature })
  return temperature === reference
    ? done({ expansion: 0, temperature })
    : refused('expansion-unknown', { place })
}

/**
 * The size at 20 °C of a part that was measured warm or cold: L₂₀ = L·(1 + α_gauge·ΔT_gauge) / (1 + α_part·ΔT_part).
 * A gauge that is not given reads true at its own temperature. Rounded to the nanometre.
 */
export function atReference(read: Length, part: PartAtTemperature, gauge?: PartAtTemperature): Length {
  return nanometres(Math.round((read * (gauge === undefined ? 1 : growth(gauge))) / growth(part)))
}

/** A size that is known at 20 °C, at the body's temperature. Rounded to the nanometre. */
export function atTemperature(size: Length, body: PartAtTemperature): Length {
  return nanometres(Math.round(size * growth(body)))
}

/** As `atTemperature`, for both ends. */
export function rangeAtTemperature({ least, most }: Range, body: PartAtTemperature): Range {
  return { least: atTemperature(least, body), most: atTemperature(most, body) }
}

function growth({ expansion, temperature }: PartAtTemperature): number {
  return 1 + expansion * 1e-6 * (temperature - reference)
}
