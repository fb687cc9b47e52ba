import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'

const ofPlace = { step: z.string(), measure: z.string(), at: z.string() }
const reason = z.string().max(600)

/** What a person says of what is measured against limits. */
export const limitCommands = [
  /** As typed, with a unit or in mm. */
  z.strictObject({
    type: z.literal('measure-limit'),
    ...ofPlace,
    typed: z.string().max(40),
    readWith: readWith.optional(),
    /** A ring gap that would be right in another unit, or is wider than any, is meant as it is typed. */
    sure: z.literal(true).optional(),
  }),
  z.strictObject({ type: z.literal('accept-measured'), ...ofPlace, reason }),
  z.strictObject({ type: z.literal('replace-measured'), ...ofPlace, reason }),
] as const
