import { z } from 'zod'

const reason = z.string().max(600)

/** What a person saw before it is confirmed that a step is done again. */
export const seenBeforeAgain = {
  /** The ids of the other steps that are open again with it. */
  opens: z.array(z.string()).max(1000),
  /** What had to be was taken apart at the bench. */
  takenApart: z.literal(true).optional(),
}

/** What is asked of the plan of a build. */
export const planCommands = [
  z.strictObject({ type: z.literal('redo-step'), step: z.string(), reason, ...seenBeforeAgain }),
  z.strictObject({ type: z.literal('skip-step'), step: z.string(), reason }),
  z.strictObject({ type: z.literal('take-back-skip'), step: z.string(), reason }),
] as const
