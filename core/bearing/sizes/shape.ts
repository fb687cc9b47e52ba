import type { Fit } from '../../engine/index.ts'
import { problem, type Problem } from '../../problem/index.ts'
import { lengthAmount, nanometres, type Length } from '../../quantity/index.ts'
import type { Range } from '../clearance.ts'
import type { MeasuredSize } from './measured.ts'

/**
 * Out-of-round and taper beyond what the spec allows, its limits being allowed themselves. None where it sets none. A taper that is
 * given for a length is judged between every two planes, by the distance between them.
 */
export function shapeFaults(
  fit: Fit,
  place: string,
  what: 'bore' | 'journal',
  measured: MeasuredSize,
): readonly Problem[] {
  const { outOfRound } = fit.measuring ?? {}
  const faults: Problem[] = []
  if (outOfRound !== undefined && measured.outOfRound > outOfRound)
    faults.push(problem('out-of-round', { place, what, ...beyond(measured.outOfRound, outOfRound) }))
  const steep = steepestSlope(fit, measured)
  if (steep !== null) faults.push(problem('tapered', { place, what, ...beyond(steep.taper, steep.allowed) }))
  return faults
}

/**
 * What the spec allows of taper between two planes so many places apart, of those that are measured: over any distance alike, or in
 * proportion to it where the taper is given for a length (TM 5-3805-281-24-2: 0.0025 mm per 25.4 mm). The planes lie evenly. Null
 * where it sets no limit.
 */
export function allowedTaper({ measuring }: Fit, places: number): Length | null {
  if (measuring?.taper === undefined) return null
  const { planes, taper, taperPer, planesApart } = measuring
  if (taperPer === undefined || planesApart === undefined || planes < 2) return taper
  return nanometres(Math.round((taper * planesApart * places) / ((planes - 1) * taperPer)))
}

/** Of the tapers that are beyond what is allowed, the one that is furthest beyond; null where none is. */
function steepestSlope(fit: Fit, { taper, taperByDistance }: MeasuredSize) {
  const tapers =
    fit.measuring?.taperPer === undefined
      ? [{ taper, allowed: allowedTaper(fit, 1) }]
      : taperByDistance.map((each, index) => ({ taper: each, allowed: allowedTaper(fit, index + 1) }))
  const beyondLimit = tapers.flatMap(({ taper, allowed }) =>
    allowed !== null && taper > allowed ? [{ taper, allowed }] : [],
  )
  return (
    beyondLimit.toSorted((one, other) => other.taper / other.allowed - one.taper / one.allowed)[0] ?? null
  )
}

/**
 * A gap that is measured directly, end float or the side clearance of a rod: null when inside its limits. `place` is
 * the saddle, null for the rods.
 */
export function gapFault(
  place: string | null,
  gap: 'end-float' | 'side-clearance',
  reading: Length,
  limits: Range,
): Problem | null {
  if (reading >= limits.least && reading <= limits.most) return null
  return problem('gap-outside-limits', {
    place,
    gap,
    reading: lengthAmount(reading, 'mm'),
    least: lengthAmount(limits.least, 'mm'),
    most: lengthAmount(limits.most, 'mm'),
  })
}

function beyond(reading: Length, allowed: Length) {
  return { reading: lengthAmount(reading, 'µm', 1), allowed: lengthAmount(allowed, 'µm', 1) }
}
