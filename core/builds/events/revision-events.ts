import { z } from 'zod'

/** The build goes on by a newer revision of its spec. The steps that are open again with it have an entry each, which follows. */
export const revisionEvents = [
  z.strictObject({
    type: z.literal('revision-taken-over'),
    version: z.literal(1),
    spec: z.string(),
    specRevision: z.string(),
    /** SHA-256 of the text of the spec that holds from here on, in hexadecimal. */
    specSha256: z.string().regex(/^[0-9a-f]{64}$/),
    reason: z.string().trim().min(1).max(600),
    /** The steps that a person saw would be open again with it. */
    opens: z.array(z.string()),
    /** The person said that what had to be was taken apart at the bench. */
    takenApart: z.literal(true).optional(),
    /** What was read or decided in terms that the newer revision does not have. */
    dropped: z.strictObject({
      marks: z.array(z.strictObject({ fit: z.string(), part: z.enum(['housing', 'journal']) })),
      /** The fits of which readings, undersizes, pins and the tray are gone. */
      readings: z.array(z.string()),
      /** The procedures of which a person's own order is gone. */
      ownOrders: z.array(z.string()),
    }),
  }),
] as const

export type RevisionEvent = z.output<(typeof revisionEvents)[number]>
