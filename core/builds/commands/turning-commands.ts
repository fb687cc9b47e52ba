import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'

const ofStep = { step: z.string() }
const reason = z.string().max(600)

/** What a person says of turning the crank. */
export const turningCommands = [
  z.strictObject({
    type: z.literal('turn-crank'),
    ...ofStep,
    /** As typed or sent by a gauge, a torque or force × lever; null where it is turned by hand. */
    typed: z.string().max(40).nullable(),
    readWith: readWith.optional(),
    /** By hand: whether it turns freely. Says nothing beside a reading. */
    free: z.boolean(),
    note: reason,
  }),
  z.strictObject({ type: z.literal('accept-turning'), ...ofStep, reason }),
  z.strictObject({ type: z.literal('void-turning'), ...ofStep, reason }),
] as const
