import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'
import { lengthUnits } from '../../quantity/index.ts'
import { halvesOfTray, pin } from '../events/bearing-events.ts'

const part = z.enum(['housing', 'journal'])
const typed = z.string().max(40)
const reason = z.string().max(600)
const ofBearing = { step: z.string(), position: z.string() }

/** A cell of an entry grid: what was typed, and the unit of a bare number. */
const cell = z.strictObject({ typed, unit: z.enum(lengthUnits) })

/** What a person says of bearings; `step` is the one that chooses their shells. */
export const bearingCommands = [
  z.strictObject({
    type: z.literal('note-readings'),
    ...ofBearing,
    part,
    cells: z.array(z.array(cell.extend({ readWith: readWith.optional() })).max(6)).max(4),
    /** With a unit or in °C; empty for 20 °C. */
    partTemperature: typed,
    /** Empty where the gauge reads true at its own temperature. */
    gaugeTemperature: typed,
    /** With a unit or in µm; empty where it is not known. */
    uncertainty: typed,
    /** A reading that does not go with the others was taken again, and is right. */
    sure: z.literal(true).optional(),
  }),
  z.strictObject({ type: z.literal('withdraw-readings'), ...ofBearing, part, reason }),
  z.strictObject({
    type: z.literal('declare-undersize'),
    step: z.string(),
    positions: z.array(z.string()).max(40),
    undersize: z.string().nullable(),
    /** Decides for this size where the journal measures another. */
    reason: reason.optional(),
  }),
  z.strictObject({
    type: z.literal('decide-basis'),
    ...ofBearing,
    by: z.enum(['marks', 'readings']),
    reason,
  }),
  z.strictObject({
    type: z.literal('pin-shells'),
    ...ofBearing,
    upper: pin.nullable(),
    lower: pin.nullable(),
    reason,
  }),
  z.strictObject({ type: z.literal('release-shells'), ...ofBearing }),
  z.strictObject({
    type: z.literal('note-tray'),
    step: z.string(),
    halves: halvesOfTray,
    lines: z
      .array(
        z.strictObject({
          label: typed,
          grade: typed,
          undersize: z.string().max(80).nullable(),
          half: z.enum(['upper', 'lower', 'either']),
          /** As typed. */
          count: typed,
          /** The measured wall; empty where the grade's band has to do. */
          wall: cell,
        }),
      )
      .max(200),
  }),
  z.strictObject({
    type: z.literal('read-thread'),
    ...ofBearing,
    width: cell,
    readWith: readWith.optional(),
    /** From one width on the card to the next. */
    cardStep: cell,
  }),
] as const

export type BearingCommand = z.output<(typeof bearingCommands)[number]>
