import { z } from 'zod'
import { benchName, recordedEvent } from '../builds/index.ts'
import { buildLine } from './build-line.ts'
import { libraryLine } from './drafts.ts'
import { problemMessage } from './problem-message.ts'
import { shopCut } from './shop-cut.ts'

/** How a build stands among the benches of a shop. */
export const buildBenches = z.strictObject({
  here: benchName,
  /** Whether the bench belongs to a shop. */
  isJoined: z.boolean(),
  /** The bench that began it, where that was another one. */
  begunAt: benchName.nullable(),
  /** Why nobody goes on with it here: another bench has recorded something else. */
  apart: problemMessage.nullable(),
  /** When the archive last had something to say of it, where the build is another bench’s. */
  asOf: z.iso.datetime().nullable(),
  cut: shopCut,
})
export type BuildBenches = z.output<typeof buildBenches>

/** A build as the host has it. */
export const storedBuild = z.strictObject({
  line: buildLine,
  /** The text of the spec that the build goes by; `readSpec` turns it into an engine. */
  specText: z.string(),
  /** Those that it went by before, in order, each up to and including an entry; absent where it keeps the one it was begun with. */
  earlier: z.array(z.strictObject({ specText: z.string(), until: z.int() })).optional(),
  /** A revision of the library that is newer than the one it goes by; absent where there is none, and once it is finished. */
  newer: libraryLine.optional(),
  events: z.array(recordedEvent),
  /** Why nothing can be added, where that is so; null when the build is open for work. */
  readOnly: problemMessage.nullable(),
  /** What belongs to the benches of a shop; absent in practice. */
  benches: buildBenches.optional(),
})
export type StoredBuild = z.output<typeof storedBuild>
