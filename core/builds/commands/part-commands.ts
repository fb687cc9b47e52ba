import { z } from 'zod'

const reason = z.string().max(600)
const ofPart = { step: z.string(), part: z.string() }

/** What a person says of the parts of the list. */
export const partCommands = [
  z.strictObject({
    type: z.literal('tick-parts'),
    ...ofPart,
    count: z.int().min(1).max(999),
    condition: z.enum(['new', 'used-again']),
    before: z.int().min(1).max(999).optional(),
    /** Empty where none is asked for. */
    reason,
    /** The supplier's number; empty where none is typed. */
    number: z.string().max(80),
  }),
  z.strictObject({ type: z.literal('remove-ticks'), ...ofPart, reason }),
  z.strictObject({ type: z.literal('leave-over'), ...ofPart, usedIn: z.string(), reason }),
  z.strictObject({ type: z.literal('count-parts'), step: z.string() }),
] as const
