import { done, refused, type Outcome } from '../problem/index.ts'
import { inMillimetres, millimetres, type Length } from '../quantity/index.ts'
import type { Thread } from './thread.ts'

/** The ring on which a head or nut turns: its outer diameter d_w and that of the hole in it d_h. */
export type BearingFace = { readonly outer: Length; readonly hole: Length }

/** Refuses `bearing-face-out-of-range` unless the hole is above zero and the face is larger than the hole. */
export function bearingFace(outer: Length, hole: Length): Outcome<BearingFace> {
  if (hole > 0 && outer > hole) return done({ outer, hole })
  return refused('bearing-face-out-of-range', {
    outerMm: inMillimetres(outer),
    holeMm: inMillimetres(hole),
  })
}

/**
 * The bearing face to calculate with when only the width across flats of a hexagon is known: d_w = 0.9 of the width, d_h =
 * 1.1·d. The least d_w of ISO 4014 lies between 0.89 and 0.93 of the width, the medium holes of ISO 273 between 1.08 and
 * 1.13·d, for M6 to M14; the torque that follows is within 3 % of the one from those tables.
 *
 * Refuses as `bearingFace` does, when the hexagon is hardly wider than the thread.
 */
export function hexBearingFace(thread: Thread, acrossFlats: Length): Outcome<BearingFace> {
  return bearingFace(
    millimetres(0.9 * inMillimetres(acrossFlats)),
    millimetres(1.1 * inMillimetres(thread.diameter)),
  )
}

/**
 * d_w of ISO 4762 lies between 0.62 and 0.83 mm below the diameter of the head, for M6 to M16; the chamfer below the head of ASME
 * B18.3, at most 0.010 in up to 3/8 in and 0.015 in up to 5/8 in, takes 0.51 and 0.76 mm off it.
 */
const edgeMm = 0.7

/** The same for a socket screw of ISO 4762 or ASME B18.3: d_w from the diameter of its head. Refuses as `bearingFace` does. */
export function socketBearingFace(thread: Thread, headDiameter: Length): Outcome<BearingFace> {
  const hole = millimetres(1.1 * inMillimetres(thread.diameter))
  return bearingFace(millimetres(inMillimetres(headDiameter) - edgeMm), hole)
}

/** D_Km, the diameter at which friction under the head is taken to act: the mean of d_w and d_h, in mm (VDI 2230). */
export function frictionDiameterMm({ outer, hole }: BearingFace): number {
  return (inMillimetres(outer) + inMillimetres(hole)) / 2
}
