import type { Fit } from '../../engine/index.ts'
import { problem, type Problem } from '../../problem/index.ts'
import { lengthAmount, type Length } from '../../quantity/index.ts'
import type { Range } from '../clearance.ts'
import type { Measured } from './measured.ts'

/** Out-of-round and taper beyond what the spec allows, its limits being allowed themselves. None where it sets none. */
export function shapeFaults(
  fit: Fit,
  place: string,
  what: 'bore' | 'journal',
  measured: Measured,
): readonly Problem[] {
  const { outOfRound, taper } = fit.measuring ?? {}
  const faults: Problem[] = []
  if (outOfRound !== undefined && measured.outOfRound > outOfRound)
    faults.push(problem('out-of-round', { place, what, ...beyond(measured.outOfRound, outOfRound) }))
  if (taper !== undefined && measured.taper > taper)
    faults.push(problem('tapered', { place, what, ...beyond(measured.taper, taper) }))
  return faults
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
