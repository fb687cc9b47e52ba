import { z } from 'zod'

const ofPlace = {
  step: z.string(),
  place: z.string(),
  round: z.union([z.literal(1), z.literal(2)]),
}

/** What a person says of work that is done place by place. */
export const placedCommands = [
  /** `note` is empty where nothing was written. */
  z.strictObject({ type: z.literal('do-place'), ...ofPlace, note: z.string().max(600) }),
  z.strictObject({ type: z.literal('undo-place'), ...ofPlace, reason: z.string().max(600) }),
] as const
