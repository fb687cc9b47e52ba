import { z } from 'zod'

const ofPiston = { step: z.string(), cylinder: z.int() }

/** What a person says of rings on their pistons. */
export const ringCommands = [
  z.strictObject({
    type: z.literal('fit-rings'),
    ...ofPiston,
    /** The gaps that stand elsewhere than the spec has them, as typed in degrees; an empty list where all stand so. */
    others: z.array(z.strictObject({ ring: z.string(), typed: z.string().max(40) })).max(12),
  }),
  z.strictObject({ type: z.literal('take-off-rings'), ...ofPiston, reason: z.string().max(600) }),
] as const
