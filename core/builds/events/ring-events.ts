import { z } from 'zod'

const ofPiston = { version: z.literal(1), step: z.string(), cylinder: z.int().min(1) }

/** Rings on their pistons. */
export const ringEvents = [
  z.strictObject({
    type: z.literal('rings-fitted'),
    ...ofPiston,
    /** Where each gap stands: clockwise from the nose side, looking at the crown. */
    gaps: z.array(z.strictObject({ ring: z.string(), degrees: z.number().min(0).lt(360) })).max(12),
  }),
  z.strictObject({
    type: z.literal('rings-taken-off'),
    ...ofPiston,
    reason: z.string().trim().min(1).max(600),
  }),
] as const

export type RingEvent = z.output<(typeof ringEvents)[number]>
