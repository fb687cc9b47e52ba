import { z } from 'zod'
import { advise } from './advice.ts'
import { idText, shownName } from './text.ts'

const mostOfOne = 999
/** More than any bottom end has; a longer list is of another kind. */
const mostParts = 300

const howMany = z.int().min(1).max(mostOfOne)

/**
 * A part that the build takes: what it is, how many, where it goes and whether it may go in a second time. Shells are chosen
 * by their fits and bolts are counted by their groups; both have places of their own in a spec.
 */
export const part = z.strictObject({
  id: idText,
  name: shownName,
  count: howMany,
  /** Where it goes, in words. */
  place: shownName,
  /** New each time, or used again up to a limit: in words, or in so many builds in all. */
  reuse: z.union([
    z.literal('new-each-time'),
    z
      .strictObject({ limit: shownName.optional(), uses: z.int().min(2).max(100).optional() })
      .refine(({ limit, uses }) => limit !== undefined || uses !== undefined, advise('part-limit')),
  ]),
  /** The steps that use it up, and how many each; together its count. */
  usedIn: z
    .array(z.strictObject({ step: idText, count: howMany }))
    .min(1, advise('part-unused'))
    .max(100),
})

/** Everything that the build takes beside shells and bolts. */
export const parts = z.array(part).max(mostParts, advise('parts-too-many', { most: mostParts }))

export type Part = z.output<typeof part>
