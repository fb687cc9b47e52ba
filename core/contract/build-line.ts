import { z } from 'zod'
import { standing } from '../builds/index.ts'
import { problemMessage } from './problem-message.ts'

/** A build as a line of a list. */
export const buildLine = z.strictObject({
  /** A UUID; anything where `fault` says that it is none. */
  id: z.string(),
  /** Short and counted up by this bench, for example `2026-014`. */
  number: z.string(),
  /** The bench that began it, where that was another one of the shop; `number` is then that bench’s. */
  begunAt: z.string().optional(),
  name: z.string(),
  serial: z.string(),
  engine: z.string(),
  demo: z.boolean(),
  startedAt: z.iso.datetime(),
  lastAt: z.iso.datetime(),
  finished: z.boolean(),
  /** Void: it does not count. */
  voided: z.boolean(),
  /** Whether anything in it was ever flagged, answered or not. */
  flagged: z.boolean(),
  entries: z.int(),
  /** Where an open build stands; null for one that is finished or void, and where it cannot be read to its last entry. */
  standing: standing.nullable(),
  /** Why this row of the list cannot be relied on; null for a sound one. */
  fault: problemMessage.nullable(),
})
export type BuildLine = z.output<typeof buildLine>
