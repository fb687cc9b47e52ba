import { z } from 'zod'
import { degrees, type Angle, type ThreadDesignation } from '../quantity/index.ts'
import { inSteps, type PassStep } from './in-steps.ts'
import { eitherAngle, turnedBefore, withTarget } from './printed-values.ts'
import {
  angleText,
  extentText,
  forceText,
  gapText,
  idText,
  nameText,
  placeText,
  sentenceText,
  sizeText,
  threadText,
  torqueText,
} from './text.ts'

/** A thread by its sizes, which are those of a metric one, or by its designation. */
const thread = z.union([
  z
    .strictObject({ diameter: sizeText, pitch: sizeText })
    .transform((sizes): ThreadDesignation => ({ ...sizes, system: 'metric' })),
  threadText,
])

/** What parts and fasteners are made of, as far as the calculation tells them apart. */
const material = z.enum(['aluminium', 'cast-iron', 'steel'])

export const fastenerGroup = z.strictObject({
  id: idText,
  name: nameText,
  thread,
  /** Clamped length between head and first engaged thread, or the nut. */
  grip: sizeText,
  /** ISO 898-1, for example "10.9"; SAE J429, for example "SAE 8". */
  propertyClass: z.string().max(8),
  /** Across the flats of a hexagon head; of the key of a socket head. */
  acrossFlats: sizeText,
  head: z.enum(['hexagon', 'socket']).default('hexagon'),
  /** What the thread goes into. */
  into: z.enum(['tapped-hole', 'nut']).default('tapped-hole'),
  /** The diameter of a waisted shank, where it is thinner than the thread. */
  shank: sizeText.optional(),
  /** Outer diameter of the face under the head, d_w, and the hole it sits on, d_h; usual ones when absent. */
  headFace: z.strictObject({ outer: sizeText, hole: sizeText }).optional(),
  threadState: z.enum(['dry', 'oiled', 'sealant', 'thread-lock']),
  /** The friction class that the coating and lubricant have (VDI 2230 part 1, table A5), where it is known. */
  frictionClass: z.enum(['A', 'B', 'C', 'D']).optional(),
  /** What it takes to run the fastener down, before it clamps: a locking nut or insert (ISO 2320). */
  prevailing: torqueText.optional(),
  reuse: z.enum(['reusable', 'new-each-time']),
  /**
   * What becomes of a reusable one that went past the most of a pass, where the manual says so. Unless told, one that is
   * turned by an angle is replaced and any other begins again; single-use ones are always replaced.
   */
  pastMost: z.enum(['replace', 'begin-again']).optional(),
  /** What pulls at each of them while the engine runs, and where it comes in (n of VDI 2230): for teaching alone. */
  workingLoad: z
    .strictObject({ force: forceText, introduction: z.number().min(0).max(1).default(1) })
    .optional(),
  washer: z.boolean().default(false),
  /** What the fastener is screwed into or clamps; decides the joint's stiffness. */
  clamped: material.default('aluminium'),
  /** The parts within the grip from the head on, where they are not all of `clamped`. */
  layers: z
    .array(z.strictObject({ material, thickness: sizeText }))
    .min(1)
    .max(12)
    .optional(),
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

const inAllAdvice =
  'give an angle above what they were turned before, which must be the same for all of them, or write “target” for each'

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
      only: z.array(idText).min(1, 'name one fastener at least').max(1000).optional(),
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
  }),
])

export const procedure = z
  .strictObject({
    id: idText,
    name: nameText,
    face: idText,
    orders: z.array(order).min(1).max(12),
    passes: z.array(pass).min(1, 'a procedure has at least one pass').max(40),
  })
  .transform((read, context) => {
    const before = turnedBefore(read)
    const passes = read.passes.map((each, index) => {
      const turned = before.get(index)
      if (each.kind !== 'angle' || each.inAll === undefined || turned === undefined) return each
      if (turned === null) {
        context.addIssue({ code: 'custom', path: ['passes', index, 'inAll'], message: inAllAdvice })
        return each
      }
      const less = (angle: Angle) => degrees(Math.max(0, angle - turned))
      return {
        ...each,
        target: less(each.inAll),
        ...(each.least !== undefined && { least: less(each.least) }),
        ...(each.most !== undefined && { most: less(each.most) }),
      }
    })
    const stepped = inSteps({ ...read, passes })
    for (const { pass, message } of stepped.unreached)
      context.addIssue({ code: 'custom', path: ['passes', pass, 'inSteps'], message })
    return { ...read, passes: stepped.passes }
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
/** A pass as it is carried out; one in steps is as many passes, each with its number among them. */
export type Pass = z.output<typeof pass> & { readonly step?: PassStep }
export type PassKind = Pass['kind']
export type Procedure = z.output<typeof procedure>
export type Bead = z.output<typeof bead>
