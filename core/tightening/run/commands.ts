import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'
import { cause } from './answers.ts'
import { readUnits } from './events.ts'
import { heldWrench } from '../wrench/held.ts'

const common = { procedure: z.string() }
const typedReason = z.string().max(600)
/** As typed, or sent by a gauge. */
const typedReading = z.strictObject({ typed: z.string().max(40), unit: z.enum(readUnits) })

/**
 * What a person asks of a run. Texts come as typed: whether they will do is decided in `decide-run.ts`, in
 * sentences.
 */
export const runCommands = [
  z.strictObject({
    type: z.literal('start-run'),
    ...common,
    /** The numbers of an order's fasteners in another order than the spec's, as typed. */
    own: z
      .strictObject({
        reason: typedReason,
        orders: z.array(z.strictObject({ order: z.string(), typed: z.string().max(8000) })).max(12),
      })
      .optional(),
  }),
  z.strictObject({ type: z.literal('declare-new'), ...common, group: z.string() }),
  z.strictObject({
    type: z.literal('pull'),
    ...common,
    pass: z.int().min(0),
    fastener: z.string().nullable(),
    /** The cap that an action is about; only where the procedure goes cap by cap. */
    cap: z.string().optional(),
    /** As typed or sent by a gauge; null when the click is all there is. */
    reading: typedReading.nullable(),
    readWith: readWith.optional(),
    /** The wrench of the shop that it is pulled with; a reading is brought from its scale to the fastener. */
    held: heldWrench.optional(),
    /** The torque at which the length was reached, where it is tightened until it is; as typed. */
    torque: typedReading.optional(),
    /**
     * What it takes to run down, before it touches, as typed: only where that goes on top of the spec's torque, and once for a
     * fastener.
     */
    running: typedReading.optional(),
    /** How long was waited, where the procedure waits, and why not longer, where that is less than it says. */
    waited: z.strictObject({ seconds: z.number().min(0), shortened: typedReason.nullable() }).optional(),
    /** Why it is pulled although the open time of the sealant in its joint is over, as typed; only asked for where it is. */
    overTime: typedReason.optional(),
    /** The fastener turned in a recheck pass. */
    moved: z.boolean().default(false),
    /** A length that does not go with the others, or with the fastener's own before, was looked at again and is right. */
    sure: z.literal(true).optional(),
    outOfOrder: typedReason.nullable(),
  }),
  z.strictObject({
    type: z.literal('take-back'),
    ...common,
    pull: z.int().min(1),
    /** Of a turn: it was confirmed without being turned at all. One that was turned cannot be taken back. */
    notTurned: z.literal(true).optional(),
    /** Its reading was mistyped, and nothing went past its upper limit. */
    mistyped: z.literal(true).optional(),
    reason: typedReason,
  }),
  /** Reads a pull that is flagged once more, off the same scale: the first reading was wrong, not the pull. */
  z.strictObject({
    type: z.literal('read-again'),
    ...common,
    pull: z.int().min(1),
    reading: typedReading,
    readWith: readWith.optional(),
    /** As of the pull; the torque stays as it was read where it is left out. */
    torque: typedReading.optional(),
    reason: typedReason,
  }),
  z.strictObject({
    type: z.literal('note-problem'),
    ...common,
    fastener: z.string().nullable(),
    text: typedReason,
  }),
  z.strictObject({ type: z.literal('answer-flag'), ...common, flag: z.int().min(1), answer: typedReason }),
  /** Turns a fastener loose that has had too much, or that is to begin again: its pulls no longer count. */
  z.strictObject({
    type: z.literal('loosen-fastener'),
    ...common,
    fastener: z.string(),
    /** Empty where `cause` says why: the way out of an open flag. */
    reason: typedReason,
    cause: cause.exclude(['gap-out', 'joint-opened']).optional(),
  }),
  /** A new one in the place of one that was loosened. */
  z.strictObject({ type: z.literal('replace-fastener'), ...common, fastener: z.string() }),
  /** Begins the run again from a pass, counted from 0: what was pulled in it and after it no longer counts. */
  z.strictObject({
    type: z.literal('restart-run'),
    ...common,
    pass: z.int().min(0),
    /** Because a gap of the joint face is out of its limits; `reason` may then be empty. */
    measuredAgain: z.literal(true).optional(),
    /** That the joint is opened is accepted: beads are wiped off, and what was closed over them is taken out. */
    jointOpened: z.literal(true).optional(),
    reason: typedReason,
  }),
  z.strictObject({ type: z.literal('pause-run'), ...common, reason: typedReason }),
  z.strictObject({ type: z.literal('resume-run'), ...common }),
] as const

export const runCommand = z.discriminatedUnion('type', runCommands)
export type RunCommand = z.output<typeof runCommand>
