import { z } from 'zod'

const version = z.literal(1)
const reason = z.string().trim().min(1).max(600)

/** A bench of the shop: what its record is known by, and what people called it at the time. */
export const benchName = z.strictObject({
  id: z.string().regex(/^[0-9a-f]{12}$/),
  name: z.string().trim().min(1).max(80),
})
export type BenchName = z.output<typeof benchName>

/** At which bench a build is worked on. Without such an entry it is the one that began it. */
export const benchEvents = [
  /** Who hands it over, and when, stands with the entry; the note may be empty. */
  z.strictObject({
    type: z.literal('build-handed-over'),
    version,
    from: benchName,
    to: benchName,
    note: z.string().trim().max(600),
  }),
  /** Another bench goes on without having been handed the build; `from` is the one that had it, where that is known. */
  z.strictObject({
    type: z.literal('build-taken-over'),
    version,
    from: benchName.nullable(),
    to: benchName,
    reason,
  }),
  /**
   * Two benches went on apart, and a person has said that the line with this entry counts over the one whose entry `entry` has the hash
   * `over`; or, where it gives way, that the other one counts. Neither is lost. The last of these in a line is what it says.
   */
  z.strictObject({
    type: z.literal('fork-settled'),
    version,
    bench: benchName,
    entry: z.int().min(1),
    over: z.string().regex(/^[0-9a-f]{64}$/),
    givesWay: z.literal(true).optional(),
    reason,
  }),
] as const

export type BenchEvent = z.output<(typeof benchEvents)[number]>
