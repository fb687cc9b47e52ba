import { inMillimetres, type Length } from '../quantity/index.ts'
import type { BearingFace } from './bearing-face.ts'
import type { Anchor } from './bolt-resilience.ts'

/** One of the clamped parts, with Young's modulus in MPa. The tapped part, or the nut, is not one of them. */
export type Layer = { readonly thickness: Length; readonly modulusMpa: number }

type Slice = { readonly thicknessMm: number; readonly modulusMpa: number }

/**
 * How far each newton squeezes the clamped parts, in mm/N (δ_P); `layers` are counted from the head down.
 *
 * The pressure spreads from the bearing face in a hollow cone of 30° half angle (Shigley's Mechanical Engineering Design,
 * 8-5). With a nut, whose face is taken to be like the head's, two cones meet half way; into a tapped hole one cone
 * goes all the way (VDI 2230 part 1, 5.1.2). The parts are taken to be wider than the cone: a narrow boss gives way
 * more than this says.
 */
export function clampedResilience(bearing: BearingFace, layers: readonly Layer[], anchor: Anchor): number {
  const slices = layers.map(({ thickness, modulusMpa }) => ({
    thicknessMm: inMillimetres(thickness),
    modulusMpa,
  }))
  if (anchor === 'tapped-hole') return coneResilience(bearing, slices)

  const halfWayMm = slices.reduce((total, { thicknessMm }) => total + thicknessMm, 0) / 2
  const fromHead = coneResilience(bearing, downTo(halfWayMm, slices))
  const fromNut = coneResilience(bearing, downTo(halfWayMm, slices.toReversed()))
  return fromHead + fromNut
}

function downTo(depthMm: number, slices: readonly Slice[]): readonly Slice[] {
  let left = depthMm
  return slices.map(({ thicknessMm, modulusMpa }) => {
    const cut = Math.min(thicknessMm, left)
    left -= cut
    return { thicknessMm: cut, modulusMpa }
  })
}

const slope = Math.tan(Math.PI / 6)

/** Of each slice ln[(2·t·tan α + D − d)(D + d) / ((2·t·tan α + D + d)(D − d))] / (π·E·d·tan α), and their sum. */
function coneResilience(bearing: BearingFace, slices: readonly Slice[]): number {
  const hole = inMillimetres(bearing.hole)
  let top = inMillimetres(bearing.outer)
  let total = 0
  for (const { thicknessMm, modulusMpa } of slices) {
    const foot = top + 2 * thicknessMm * slope
    const spread = ((foot - hole) * (top + hole)) / ((foot + hole) * (top - hole))
    total += Math.log(spread) / (Math.PI * modulusMpa * hole * slope)
    top = foot
  }
  return total
}
