import { z } from 'zod'
import { advise } from './advice.ts'
import { degrees } from '../quantity/index.ts'
import { eitherAngle, withTarget } from './printed-values.ts'
import { turning } from './turning.ts'
import { angleText, gapText, idText, sentenceText, torqueText } from './text.ts'

/** Without a target both limits are a range as it is printed, and its middle is aimed at. */
const torqueValue = {
  target: torqueText.optional(),
  least: torqueText.optional(),
  most: torqueText.optional(),
}
const angleValue = { target: angleText, least: angleText.optional(), most: angleText.optional() }
/** A value of its own, or a range as it is printed: `50 to 60`. */
const stepOf = <Value extends z.ZodType>(value: Value) =>
  z.union([
    value.transform((size) => ({ least: size, most: size })),
    z.strictObject({ least: value, most: value }),
  ])
const passCommon = { order: idText, note: sentenceText.optional() }

/** Values that differ for some fasteners of a pass. */
const otherTorques = z
  .array(
    z.strictObject({ fasteners: z.array(idText).min(1).max(1000), ...torqueValue }).transform(withTarget),
  )
  .max(40)
  .default([])

const otherAngles = z
  .array(z.strictObject({ fasteners: z.array(idText).min(1).max(1000), ...angleValue }))
  .max(40)
  .optional()

/** One trip through an order, or one thing to do between two trips. */
export const pass = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('seat'),
    ...passCommon,
    /** The widest gap that the joint face may show once all are seated; measured where it is given. */
    gap: z.strictObject({ most: gapText }).optional(),
  }),
  z
    .strictObject({
      kind: z.literal('torque'),
      ...passCommon,
      ...torqueValue,
      others: otherTorques,
      /** By how much at a time, each time through the whole order: 'to 150 in steps of 50'. */
      inSteps: stepOf(torqueText).optional(),
    })
    .transform(withTarget),
  z
    .strictObject({
      kind: z.literal('angle'),
      ...passCommon,
      ...angleValue,
      target: angleText.optional(),
      /** How far the fasteners are turned in all since their last torque, where the manual counts so; limits count so too. */
      inAll: angleText.optional(),
      others: otherAngles,
      /** By how much at a time, each time through the whole order. */
      inSteps: stepOf(angleText).optional(),
    })
    .superRefine(eitherAngle)
    .transform((pass) => ({ ...pass, target: pass.target ?? degrees(0) })),
  /** In the order as it stands, or from its last fastener to its first. */
  z.strictObject({ kind: z.literal('loosen'), ...passCommon, reversed: z.literal(true).optional() }),
  /** The wrench is set once more and must click without the fastener moving. */
  z
    .strictObject({
      kind: z.literal('recheck'),
      ...passCommon,
      ...torqueValue,
      others: otherTorques,
      /** Those of the order that are rechecked; all of them when absent. */
      only: z.array(idText).min(1, advise('fasteners-none')).max(1000).optional(),
      /** The whole pass is gone through again until a trip in which none moves. */
      repeat: z.literal('until-none-moves').optional(),
    })
    .transform(withTarget),
  /** The length of each fastener before it is pulled: what a `stretch` pass compares with. */
  z.strictObject({ kind: z.literal('length'), ...passCommon }),
  /** The length of each fastener once more: how much longer it is than in the `length` pass before. */
  z.strictObject({ kind: z.literal('stretch'), ...passCommon, least: gapText, most: gapText }),
  /**
   * Each fastener is tightened on until it is so much longer than in the `length` pass before; its torque must then lie
   * within a range.
   */
  z.strictObject({
    kind: z.literal('tighten-to-stretch'),
    ...passCommon,
    least: gapText,
    most: gapText,
    torque: z.strictObject({ least: torqueText, most: torqueText }),
  }),
  /** Between two passes: tap the crank, turn it, mark the heads, wait. */
  z.strictObject({
    kind: z.literal('action'),
    instruction: sentenceText,
    /** How long is waited before the next pass, from the pull before. */
    waitMinutes: z.number().positive().max(1440).optional(),
    /** What the gauge must show, the end float of the crank say; without it the action is done or not. */
    reading: z.strictObject({ least: gapText, most: gapText }).optional(),
    /** The crank is turned, and what it takes is read. */
    turning: turning.optional(),
  }),
])

/** Which step of a pass that is reached in several. */
export interface PassStep {
  /** 1, 2, 3 … */
  readonly number: number
  readonly of: number
}

/** A pass as it is carried out; one in steps is as many passes, each with its number among them. */
export type Pass = z.output<typeof pass> & { readonly step?: PassStep }
export type PassKind = Pass['kind']
