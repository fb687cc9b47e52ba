import { z } from 'zod'
import { done, type Outcome } from '../../problem/index.ts'
import { degrees, nanometres } from '../../quantity/index.ts'
import { nameText } from '../../engine/index.ts'
import { leverShare, type WrenchSetup } from './setting.ts'
import { numberText } from './wrench.ts'

/** The wrench that a pull was made with, and how its adapter stood: enough to bring a reading to the fastener again, and to know the wrench. */
export const heldWrench = z.strictObject({
  wrench: nameText,
  /** The number that is marked on it, and the day of its calibration then; left out where they are not known. */
  number: numberText.optional(),
  calibrated: z.iso.date().optional(),
  /** From the grip to the axis of the drive; left out where it is not known. */
  length_nm: z.int().positive().optional(),
  /** Left out for the bare wrench. `angle_deg` is α of `scaleShare`. */
  adapter: z
    .strictObject({
      name: nameText,
      offset_nm: z.int().positive(),
      angle_deg: z.number().min(0).max(180),
    })
    .optional(),
})

export type HeldWrench = z.output<typeof heldWrench>

/** What of a wrench in use goes into the record with a pull. */
export function heldAs({ wrench, adapter }: WrenchSetup): HeldWrench {
  return {
    wrench: wrench.name,
    ...(wrench.number !== undefined && { number: wrench.number }),
    ...(wrench.calibration !== undefined && { calibrated: wrench.calibration.on }),
    ...(wrench.length !== undefined && { length_nm: wrench.length }),
    ...(adapter !== null && {
      adapter: { name: adapter.name, offset_nm: adapter.offset, angle_deg: adapter.angle },
    }),
  }
}

/**
 * How many newton metres the fastener has for each one that the scale shows: 1 for a bare wrench, or when none is known.
 *
 * Refuses what `scaleShare` refuses.
 */
export function fastenerShare(heldWrench: HeldWrench | null): Outcome<number> {
  if (heldWrench?.adapter === undefined) return done(1)
  const { name, offset_nm, angle_deg } = heldWrench.adapter
  const share = leverShare(
    {
      name: heldWrench.wrench,
      length: heldWrench.length_nm === undefined ? undefined : nanometres(heldWrench.length_nm),
    },
    { name, offset: nanometres(offset_nm), angle: degrees(angle_deg) },
  )
  return share.ok ? done(1 / share.value) : share
}
