import { z } from 'zod'
import { advise } from './advice.ts'
import { idText, lengthText, recordedName, sentenceText, shownName } from './text.ts'

/** What is measured, by which it is drawn where the gauge goes. */
export const measuredKinds = [
  'ring-gap',
  'groove-clearance',
  'piston-clearance',
  'rod-side',
  'run-out',
  'deck-height',
  'other',
] as const

export const limits = z
  .strictObject({ least: lengthText.optional(), most: lengthText.optional() })
  .refine(({ least, most }) => least !== undefined || most !== undefined, advise('limits-empty'))

/** One thing that is measured at some places, against limits for new parts and for used ones. */
export const measure = z.strictObject({
  id: idText,
  name: shownName,
  what: z.enum(measuredKinds),
  /** Each place that is measured, as it is called: `Barrel 1`. */
  at: z.array(recordedName).min(1).max(40),
  /** Where the gauge goes and how it is held, in words. */
  where: sentenceText,
  new: limits,
  /** To which a used part may go; a bound that is left out is that of a new one. */
  service: limits.optional(),
})

export type Measure = z.output<typeof measure>
export type Limits = z.output<typeof limits>
export type MeasuredKind = Measure['what']
