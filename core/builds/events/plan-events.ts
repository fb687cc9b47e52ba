import { z } from 'zod'

const version = z.literal(1)
const reason = z.string().trim().min(1).max(600)
const half = z.enum(['upper', 'lower'])

/** What of a step stands in the record under another name than the step's, and no longer does. A run has an entry of its own. */
const work = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('marks') }),
  z.strictObject({ kind: z.literal('shells'), fit: z.string() }),
  z.strictObject({
    kind: z.literal('halves'),
    halves: z.array(z.strictObject({ position: z.string(), half })),
  }),
  z.strictObject({ kind: z.literal('bead'), bead: z.string() }),
  z.strictObject({ kind: z.literal('own') }),
])

/** The plan of a build: what is done again, and what it goes without. */
export const planEvents = [
  /** Work that was done is to be done again. What was recorded of it stays in the record. */
  z.strictObject({
    type: z.literal('step-reopened'),
    version,
    step: z.string(),
    /** The step that a person does again: this one, or the one that this one stands on. */
    redone: z.string(),
    reason,
    work,
    /** In the entry of the step that is done again: the others that a person saw would be open again with it. */
    opens: z.array(z.string()).optional(),
    /** There too: the person said that what had to be was taken apart at the bench. */
    takenApart: z.literal(true).optional(),
    /** It follows from a revision that was taken over, whose entry is before it. */
    byRevision: z.literal(true).optional(),
  }),
  /** The build goes on without the step. */
  z.strictObject({ type: z.literal('step-skipped'), version, step: z.string(), reason }),
  z.strictObject({ type: z.literal('skip-taken-back'), version, step: z.string(), reason }),
] as const

export type PlanEvent = z.output<(typeof planEvents)[number]>
export type ReopenedWork = z.output<typeof work>
