import { z } from 'zod'
import {
  angleText,
  extentText,
  gapText,
  idText,
  nameText,
  placeText,
  sentenceText,
  sizeText,
  torqueText,
} from './text.ts'

export const fastenerGroup = z.strictObject({
  id: idText,
  name: nameText,
  thread: z.strictObject({ diameter: sizeText, pitch: sizeText }),
  /** Clamped length between head and first engaged thread. */
  grip: sizeText,
  /** ISO 898-1, for example "10.9". */
  propertyClass: z.string().max(8),
  acrossFlats: sizeText,
  /** Outer diameter of the face under the head, d_w, and the hole it sits on, d_h; usual ones when absent. */
  headFace: z.strictObject({ outer: sizeText, hole: sizeText }).optional(),
  threadState: z.enum(['dry', 'oiled', 'sealant', 'thread-lock']),
  reuse: z.enum(['reusable', 'new-each-time']),
  /**
   * What becomes of a reusable one that went past the most of a pass, where the manual says so. Unless told, one that is
   * turned by an angle is replaced and any other begins again; single-use ones are always replaced.
   */
  pastMost: z.enum(['replace', 'begin-again']).optional(),
  washer: z.boolean().default(false),
  /** What the fastener is screwed into or clamps; decides the joint's stiffness. */
  clamped: z.enum(['aluminium', 'cast-iron', 'steel']).default('aluminium'),
})

export const fastener = z.strictObject({
  id: idText,
  /** What is written beside it on the drawing: the manual's own number where it has one. */
  number: z
    .string()
    .regex(/^[A-Z]?[0-9]{1,3}$/, 'a number is up to three digits, one capital letter before them at most'),
  group: idText,
  face: idText,
  at: placeText,
  /** For example "saddle 4, pump side". Said in words beside the number. */
  where: nameText,
})

/** An order: which fastener after which. Where it was grown by a pattern, the pattern's name is kept beside it. */
export const order = z.strictObject({
  id: idText,
  sequence: z.array(idText).min(1, 'an order has at least one fastener').max(1000),
  pattern: z.enum(['centre-out', 'spiral', 'crosswise', 'end-to-end']).optional(),
})

const torqueValue = { target: torqueText, least: torqueText.optional(), most: torqueText.optional() }
const angleValue = { target: angleText, least: angleText.optional(), most: angleText.optional() }
const passCommon = { order: idText, note: sentenceText.optional() }

/** Values that differ for some fasteners of a pass. */
const otherTorques = z
  .array(z.strictObject({ fasteners: z.array(idText).min(1).max(1000), ...torqueValue }))
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
  z.strictObject({ kind: z.literal('torque'), ...passCommon, ...torqueValue, others: otherTorques }),
  z.strictObject({ kind: z.literal('angle'), ...passCommon, ...angleValue, others: otherAngles }),
  /** In the order as it stands, or from its last fastener to its first. */
  z.strictObject({ kind: z.literal('loosen'), ...passCommon, reversed: z.literal(true).optional() }),
  /** The wrench is set once more and must click without the fastener moving. */
  z.strictObject({
    kind: z.literal('recheck'),
    ...passCommon,
    ...torqueValue,
    others: otherTorques,
    /** Those of the order that are rechecked; all of them when absent. */
    only: z.array(idText).min(1, 'name one fastener at least').max(1000).optional(),
    /** The whole pass is gone through again until a trip in which none moves. */
    repeat: z.literal('until-none-moves').optional(),
  }),
  /** The length of each fastener before it is pulled: what a `stretch` pass compares with. */
  z.strictObject({ kind: z.literal('length'), ...passCommon }),
  /** The length of each fastener once more: how much longer it is than in the `length` pass before. */
  z.strictObject({ kind: z.literal('stretch'), ...passCommon, least: gapText, most: gapText }),
  /** Between two passes: tap the crank, turn it, mark the heads. */
  z.strictObject({
    kind: z.literal('action'),
    instruction: sentenceText,
    /** What the gauge must show, the end float of the crank say; without it the action is done or not. */
    reading: z.strictObject({ least: gapText, most: gapText }).optional(),
  }),
])

export const procedure = z.strictObject({
  id: idText,
  name: nameText,
  face: idText,
  orders: z.array(order).min(1).max(12),
  passes: z.array(pass).min(1, 'a procedure has at least one pass').max(40),
})

export const bead = z.strictObject({
  id: idText,
  name: nameText,
  face: idText,
  path: z.array(placeText).min(2).max(400),
  closed: z.boolean(),
  width: sizeText,
  /** What kind of sealant, in the trade's words: silicone, anaerobic, non-setting. */
  sealant: nameText,
  /** From laying the bead to the joint being closed. */
  openTimeMinutes: z.number().positive().max(1440),
  keepOut: z
    .array(z.strictObject({ name: nameText, at: placeText, size: extentText }))
    .max(40)
    .default([]),
})

export type FastenerGroup = z.output<typeof fastenerGroup>
export type Fastener = z.output<typeof fastener>
export type Order = z.output<typeof order>
export type Pass = z.output<typeof pass>
export type PassKind = Pass['kind']
export type Procedure = z.output<typeof procedure>
export type Bead = z.output<typeof bead>
