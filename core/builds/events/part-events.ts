import { z } from 'zod'

const version = z.literal(1)
const reason = z.string().trim().min(1).max(600)
const ofPart = { version, step: z.string(), part: z.string() }

/** What becomes of the parts of the spec's list. */
export const partEvents = [
  /** So many of a part are fitted at a step that uses it. */
  z.strictObject({
    type: z.literal('parts-ticked'),
    ...ofPart,
    count: z.int().min(1),
    condition: z.enum(['new', 'used-again']),
    /** In how many builds they were before, where the spec limits that and a person said it. */
    before: z.int().min(1).optional(),
    /** Why they are used again although the spec wants new ones; null in any other case. */
    reason: reason.nullable(),
    /** The supplier's number, where a person typed it. */
    number: z.string().trim().min(1).max(80).nullable(),
  }),
  /** Nothing of the part counts as fitted at the step any more. */
  z.strictObject({ type: z.literal('ticks-removed'), ...ofPart, reason }),
  /** What was to be used at `usedIn` and was not, found when the parts were counted in `step`. */
  z.strictObject({
    type: z.literal('part-left-over'),
    ...ofPart,
    usedIn: z.string(),
    count: z.int().min(1),
    reason,
  }),
  z.strictObject({ type: z.literal('parts-counted'), version, step: z.string() }),
] as const

export type PartEvent = z.output<(typeof partEvents)[number]>
