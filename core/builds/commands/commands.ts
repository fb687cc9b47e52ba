import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'
import { bearingCommands } from './bearing-commands.ts'
import { benchCommands } from './bench-commands.ts'
import { limitCommands } from './limit-commands.ts'
import { placedCommands } from './placed-commands.ts'
import { ringCommands } from './ring-commands.ts'
import { turningCommands } from './turning-commands.ts'
import { partCommands } from './part-commands.ts'
import { photoCommands } from './photo-commands.ts'
import { planCommands, seenBeforeAgain } from './plan-commands.ts'
import { runCommands } from '../../tightening/index.ts'
import { half, measuredWith, thrustPair, washersByTable } from '../events/events.ts'

const typedReason = z.string().max(600)

/**
 * What a person asks of a build. Texts come as typed; whether they will do is decided in `decide.ts`, in
 * sentences.
 */
export const buildCommand = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('note-marks'),
    step: z.string(),
    /** As read off the part: `2 2 3 1`, `2231` or `2,2,3,1`; `?` or `-` for a worn mark. */
    typed: z.string().max(400),
    /** Where marks that are read again read otherwise, and something stands on them. */
    opens: seenBeforeAgain.opens.optional(),
    takenApart: seenBeforeAgain.takenApart,
  }),
  z.strictObject({
    type: z.literal('choose-shells'),
    step: z.string(),
    /** What differs from the proposal, half by half; an empty list takes the proposal as it stands. */
    others: z.array(z.strictObject({ position: z.string(), half, grade: z.string(), reason: typedReason })),
  }),
  z.strictObject({
    type: z.literal('fit-half'),
    step: z.string(),
    position: z.string(),
    half,
    /** A shell that was still to be ordered when it was chosen has come, and is the one in the hand. */
    arrived: z.literal(true).optional(),
  }),
  z.strictObject({
    type: z.literal('take-out-half'),
    step: z.string(),
    position: z.string(),
    half,
    reason: typedReason,
  }),
  z.strictObject({ type: z.literal('fit-part'), step: z.string() }),
  z.strictObject({ type: z.literal('take-out-part'), step: z.string(), reason: typedReason }),
  z.strictObject({ type: z.literal('lay-bead'), step: z.string() }),
  z.strictObject({ type: z.literal('wipe-off-bead'), step: z.string(), reason: typedReason }),
  z.strictObject({
    type: z.literal('answer-check'),
    step: z.string(),
    good: z.boolean(),
    /** As typed, with a unit or in mm; null where the step asks for none. */
    reading: z.string().max(40).nullable(),
    readWith: readWith.optional(),
    note: typedReason,
    fittedWashers: z.string().max(80).optional(),
    washersByTable: washersByTable.nullable().optional(),
    measuredWith: measuredWith.optional(),
    thrustPair: thrustPair.nullable().optional(),
    /** Good after not good, from a record of when nobody asked what was done. */
    unexplained: z.literal(true).optional(),
  }),
  ...bearingCommands,
  ...partCommands,
  ...limitCommands,
  ...placedCommands,
  ...photoCommands,
  ...planCommands,
  ...ringCommands,
  ...turningCommands,
  ...runCommands,
  ...benchCommands,
  /**
   * `second` is who looks at an apprentice's step. The host knows whether that person may; core only that it
   * is wanted.
   */
  z.strictObject({ type: z.literal('confirm-step'), step: z.string(), second: z.string().max(200) }),
  z.strictObject({
    type: z.literal('send-back-step'),
    step: z.string(),
    second: z.string().max(200),
    reason: typedReason,
  }),
  z.strictObject({ type: z.literal('finish-build') }),
  z.strictObject({ type: z.literal('amend-build'), text: typedReason, reason: typedReason }),
  z.strictObject({ type: z.literal('void-build'), reason: typedReason }),
])

export type BuildCommand = z.output<typeof buildCommand>
