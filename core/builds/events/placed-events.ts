import { z } from 'zod'

const ofPlace = {
  version: z.literal(1),
  step: z.string(),
  place: z.string(),
  /** 2 for marks that are looked at again. */
  round: z.union([z.literal(1), z.literal(2)]),
}

/** What is done place by place: oiled, cleaned, set the right way, aligned, noted. */
export const placedEvents = [
  z.strictObject({
    type: z.literal('place-done'),
    ...ofPlace,
    /** What a person wrote there; null where nothing. */
    note: z.string().trim().min(1).max(600).nullable(),
  }),
  z.strictObject({
    type: z.literal('place-undone'),
    ...ofPlace,
    reason: z.string().trim().min(1).max(600),
  }),
] as const

export type PlacedEvent = z.output<(typeof placedEvents)[number]>
