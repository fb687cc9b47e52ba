import { z } from 'zod'
import { advise } from './advice.ts'
import { degrees, type Angle, type ThreadDesignation } from '../quantity/index.ts'
import { inSteps } from './in-steps.ts'
import type { Cap } from './caps.ts'
import { pass } from './pass.ts'
import { turnedBefore } from './printed-values.ts'
import {
  extentText,
  forceText,
  idText,
  placeText,
  shownName,
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
  name: shownName,
  thread,
  /** Clamped length between head and first engaged thread, or the nut. */
  grip: sizeText,
  /** ISO 898-1, for example "10.9"; SAE J429, for example "SAE 8"; "A574" for an inch socket screw of ASTM A574. */
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
  /** The most that it takes to run the fastener down, before it clamps: a locking nut or insert (ISO 2320). */
  prevailing: torqueText.optional(),
  /** Whether the torques of the passes have that in them; left out where the manual does not say, and then nothing is added. */
  torqueIncludesPrevailing: z.boolean().optional(),
  reuse: z.enum(['reusable', 'new-each-time']),
  /**
   * What becomes of a reusable one that went past the most of a pass, where the manual says so. Unless stated, one that is
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
  number: z.string().regex(/^[A-Z]?[0-9]{1,3}$/, advise('number-of-fastener')),
  group: idText,
  face: idText,
  at: placeText,
  /** For example "saddle 4, pump side". Said in words beside the number. */
  where: shownName,
})

/** An order: which fastener after which. Where it was grown by a pattern, the pattern's name is kept beside it. */
export const order = z.strictObject({
  id: idText,
  /** As it is chosen; one without a name is called by its place among the orders of its procedure. */
  name: shownName.optional(),
  sequence: z.array(idText).min(1, advise('order-empty')).max(1000),
  pattern: z.enum(['centre-out', 'spiral', 'crosswise', 'end-to-end']).optional(),
})

export const procedure = z
  .strictObject({
    id: idText,
    name: shownName,
    face: idText,
    orders: z.array(order).min(1).max(12),
    passes: z.array(pass).min(1, advise('passes-none')).max(40),
    /** One cap goes through all passes, actions among them, before the next one is begun. */
    capByCap: z.literal(true).optional(),
  })
  .transform((read, context) => {
    const before = turnedBefore(read)
    const passes = read.passes.map((each, index) => {
      const turned = before.get(index)
      if (each.kind !== 'angle' || each.inAll === undefined || turned === undefined) return each
      if (turned === null) {
        context.addIssue({
          code: 'custom',
          path: ['passes', index, 'inAll'],
          message: advise('in-all-unclear'),
        })
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
    for (const { pass, why } of stepped.unreached)
      context.addIssue({ code: 'custom', path: ['passes', pass, 'inSteps'], message: advise(why) })
    /** Where it goes cap by cap: the caps in the order in which it first comes to them. Found once the spec is read. */
    const notFound: { caps?: readonly Cap[] } = {}
    return { ...read, passes: stepped.passes, ...notFound }
  })

export const bead = z.strictObject({
  id: idText,
  name: shownName,
  face: idText,
  path: z.array(placeText).min(2).max(400),
  closed: z.boolean(),
  width: sizeText,
  /** What kind of sealant, in the trade's words: silicone, anaerobic, non-setting. */
  sealant: shownName,
  /** From laying the bead to the joint being closed. */
  openTimeMinutes: z.number().positive().max(1440),
  keepOut: z
    .array(z.strictObject({ name: shownName, at: placeText, size: extentText }))
    .max(40)
    .default([]),
})

export type FastenerGroup = z.output<typeof fastenerGroup>
export type Fastener = z.output<typeof fastener>
export type Order = z.output<typeof order>
export type Procedure = z.output<typeof procedure>
export type Bead = z.output<typeof bead>
