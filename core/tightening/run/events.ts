import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'
import { lengthUnits, torqueUnits } from '../../quantity/index.ts'
import { cause, flagDeed } from './answers.ts'
import { heldWrench } from '../wrench/held.ts'

/** What a scale or a gauge may be read in. */
export const readUnits = [...torqueUnits, '°', ...lengthUnits] as const

/** A reading as the person gave it; `value` is what the scale showed, in the unit beside it. */
export const reading = z.strictObject({
  typed: z.string().max(40),
  value: z.number().min(0),
  unit: z.enum(readUnits),
  /** What the fastener had of it, in the same unit; only where an adapter made that another value. */
  atFastener: z.number().min(0).optional(),
  /** What is left of that once the fastener runs down, in the same unit: what the spec's torque is compared with where it goes on top. */
  clamping: z.number().min(0).optional(),
})

const common = { version: z.literal(1), procedure: z.string() }
const reason = z.string().trim().min(1).max(600)

/** Sequences other than the spec's, by the ids of the orders whose places they take, and why. */
const ownOrder = z.strictObject({
  reason,
  orders: z.array(z.strictObject({ order: z.string(), sequence: z.array(z.string()).min(1) })).min(1),
})

/**
 * What happens in a run, as past facts. `pass` counts from 0; a pull is named by its `pull` number, 1, 2, 3 …
 * in the run.
 */
export const runEvents = [
  z.strictObject({
    type: z.literal('run-started'),
    ...common,
    /** Absent where the spec's order is kept. */
    ownOrder: ownOrder.optional(),
  }),
  z.strictObject({ type: z.literal('fasteners-declared-new'), ...common, group: z.string() }),
  z.strictObject({
    type: z.literal('fastener-pulled'),
    ...common,
    pull: z.int().min(1),
    pass: z.int().min(0),
    /** Null for an action between passes. */
    fastener: z.string().nullable(),
    /** The cap that an action is about; only where the procedure goes cap by cap. */
    cap: z.string().optional(),
    /** The crank was turned and what it took is the reading; its rise is null where nothing was read before. */
    turning: z.strictObject({ rise_Nm: z.number().nullable() }).optional(),
    reading: reading.nullable(),
    readWith: readWith.optional(),
    /** How far it had been turned in this pass before; only where a turn that came short is turned on. */
    from_deg: z.number().positive().optional(),
    /** The wrench it was pulled with, and its adapter; absent where no wrench of the shop was chosen. */
    held: heldWrench.optional(),
    verdict: z.enum(['unread', 'within', 'under', 'over', 'moved']),
    /** What it took to run down, before it touched; only where that goes on top of the spec's torque. */
    running: reading.optional(),
    /** By how much it is longer than it was; only where that was measured. */
    stretch_nm: z.int().optional(),
    /** The torque at which it was so much longer; only where it is tightened until it is. */
    torque: reading.optional(),
    /** The person was asked about a length that is far off, looked again and is sure. */
    sure: z.literal(true).optional(),
    /** How long was waited, in seconds; only where the procedure waits. */
    waited_s: z.number().min(0).optional(),
    /** Why it was not waited as long as the procedure says; only where it was not. */
    waitShortened: reason.optional(),
    /** The beads of sealant whose open time was over, and why their joint is closed anyway; only where one was. */
    overTime: z.strictObject({ beads: z.array(z.string()).min(1), reason }).optional(),
    /** Why it was pulled before its turn; null when it was its turn. */
    outOfOrder: reason.nullable(),
  }),
  z.strictObject({
    type: z.literal('pull-taken-back'),
    ...common,
    pull: z.int().min(1),
    /** Of a turn, which stays turned when it is taken back: that it was confirmed without being turned at all. */
    notTurned: z.literal(true).optional(),
    /** Its reading was mistyped: with it goes the flag that says it went past its upper limit. */
    mistyped: z.literal(true).optional(),
    reason,
  }),
  /** What a pull shows, read once more: the fastener was not touched, and the reading before was wrong. */
  z.strictObject({
    type: z.literal('pull-read-again'),
    ...common,
    pull: z.int().min(1),
    reading,
    readWith: readWith.optional(),
    verdict: z.enum(['within', 'under', 'over']),
    stretch_nm: z.int().optional(),
    torque: reading.optional(),
    turning: z.strictObject({ rise_Nm: z.number().nullable() }).optional(),
    reason,
  }),
  z.strictObject({
    type: z.literal('problem-noted'),
    ...common,
    pull: z.int().min(1).nullable(),
    fastener: z.string().nullable(),
    text: reason,
  }),
  z.strictObject({
    type: z.literal('flag-answered'),
    ...common,
    flag: z.int().min(1),
    /** As a person typed it; absent where a deed answers. */
    answer: reason.optional(),
    deed: flagDeed.optional(),
  }),
  /** All pulls of a fastener no longer count: it begins again. */
  z.strictObject({
    type: z.literal('fastener-loosened'),
    ...common,
    fastener: z.string(),
    /** The cap that it holds, where the procedure goes cap by cap: what was done to that cap is done again. */
    cap: z.string().optional(),
    /** As a person typed it; or the cause, where the program asked for it. One of the two. */
    reason: reason.optional(),
    cause: cause.optional(),
  }),
  z.strictObject({ type: z.literal('fastener-replaced'), ...common, fastener: z.string() }),
  /** One moved in a pass that is repeated until none does: its pulls no longer count. */
  z.strictObject({ type: z.literal('pass-repeated'), ...common, pass: z.int().min(0) }),
  /** All pulls of a pass and of those after it no longer count. */
  z.strictObject({
    type: z.literal('run-restarted'),
    ...common,
    pass: z.int().min(0),
    /** A gap of the joint face out of its limits is measured again: its flags go with what no longer counts. */
    measuredAgain: z.literal(true).optional(),
    /** The joint is opened: the beads that it closes are wiped off, and what was closed over them is taken out. */
    jointOpened: z.literal(true).optional(),
    reason: reason.optional(),
    cause: cause.optional(),
  }),
  z.strictObject({ type: z.literal('run-paused'), ...common, reason: z.string().trim().max(600) }),
  z.strictObject({ type: z.literal('run-resumed'), ...common }),
] as const

export const runEvent = z.discriminatedUnion('type', runEvents)
export type RunEvent = z.output<typeof runEvent>
export type Reading = z.output<typeof reading>
export type OwnOrder = z.output<typeof ownOrder>
