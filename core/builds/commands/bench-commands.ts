import { z } from 'zod'
import { benchName } from '../events/bench-events.ts'

const reason = z.string().max(600)

/** What is asked of the benches of a shop. The host gives these, by requests of their own: it knows the benches. */
export const benchCommands = [
  z.strictObject({ type: z.literal('hand-over'), to: benchName, note: reason }),
  z.strictObject({ type: z.literal('take-over'), reason }),
  z.strictObject({
    type: z.literal('settle-fork'),
    entry: z.int().min(1),
    over: z.string(),
    /** The other line counts. */
    givesWay: z.literal(true).optional(),
    reason,
  }),
] as const
