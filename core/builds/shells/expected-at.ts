import { expectedSize, type ExpectedReading, type Range } from '../../bearing/index.ts'
import { nanometres, type Length } from '../../quantity/index.ts'
import type { EngineSpec, Fit } from '../../engine/index.ts'

type MeasuredPart = 'bore' | 'journal' | 'wall'

/** Planes along the axis and directions across it in which a bore or journal of the fit is measured. */
export function measuringOf({ measuring }: Fit): { readonly planes: number; readonly directions: number } {
  return { planes: measuring?.planes ?? 2, directions: measuring?.directions ?? 2 }
}

/**
 * About what a reading will be. Where the spec gives no bands the nominal bore of the bearing has to do: near enough to
 * tell one unit from another.
 */
export function expectedAt(
  spec: EngineSpec,
  fit: Fit,
  position: string,
  what: MeasuredPart,
): ExpectedReading {
  const between = expectedSize(fit, what) ?? aroundBore(what, boreOf(spec, position))
  return { place: position, what, between }
}

/** Shares of the nominal bore within which each of them lies in any engine. */
const shares = { bore: [0.97, 1.03], journal: [0.75, 1], wall: [0.005, 0.15] } as const

function aroundBore(what: MeasuredPart, bore: Length): Range {
  const [least, most] = shares[what]
  return { least: nanometres(Math.round(bore * least)), most: nanometres(Math.round(bore * most)) }
}

/** Throws when the case has no such bearing: `audit` finds that before a build can be started. */
function boreOf({ case: { saddles, rods, balanceBearings } }: EngineSpec, position: string): Length {
  const found = [...saddles, ...rods, ...balanceBearings].find(({ id }) => id === position)
  if (found === undefined) throw new Error(`the case has no bearing ${position}`)
  return found.diameter
}
