import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'

const version = z.literal(1)
const reason = z.string().trim().min(1).max(600)
const ofPlace = { version, step: z.string(), measure: z.string(), at: z.string() }

/** What was measured against limits in a step of that kind. */
export const limitEvents = [
  z.strictObject({
    type: z.literal('limit-measured'),
    ...ofPlace,
    reading: z.strictObject({ typed: z.string().max(40), length_nm: z.int() }),
    readWith: readWith.optional(),
    /** Within the limits of a new part, within those of a used one alone, or outside both. */
    verdict: z.enum(['new', 'service', 'outside']),
  }),
  /** What is outside stays as it is. */
  z.strictObject({ type: z.literal('limit-accepted'), ...ofPlace, reason }),
  /** Another part is in, or the old one was worked on: it is measured again. */
  z.strictObject({ type: z.literal('measured-part-replaced'), ...ofPlace, reason }),
] as const

export type LimitEvent = z.output<(typeof limitEvents)[number]>
