import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'
import { lengthUnits } from '../../quantity/index.ts'

const version = z.literal(1)
const reason = z.string().trim().min(1).max(600)
const part = z.enum(['housing', 'journal'])

/** A length as it was typed, the unit that a bare number was taken in, and what it comes to. */
const typedLength = z.strictObject({
  typed: z.string().max(40),
  unit: z.enum(lengthUnits),
  length_nm: z.int(),
})

const typedTemperature = z.strictObject({ typed: z.string().max(40), celsius: z.number() })

/** What one half is pinned to: a grade, wherever it comes from, or one line of the tray. */
export const pin = z.union([
  z.strictObject({ grade: z.string() }),
  z.strictObject({ label: z.string().max(40) }),
])

export const halvesOfTray = z.enum(['alike', 'differ'])

/** Shells of one kind in the tray; `wall` as measured at the crown, null where the grade's band has to do. */
const trayLine = z.strictObject({
  label: z.string().trim().min(1).max(40),
  grade: z.string(),
  undersize: z.string().nullable(),
  half: z.enum(['upper', 'lower', 'either']),
  count: z.int().min(0),
  wall: typedLength.nullable(),
})

const ofBearing = { version, step: z.string(), fit: z.string(), position: z.string() }

/** What is measured of bearings, and what a person decides about them before their shells are chosen. */
export const bearingEvents = [
  z.strictObject({
    type: z.literal('readings-noted'),
    ...ofBearing,
    part,
    /** Planes along the axis, in each the directions across it; as the gauge showed them. */
    cells: z
      .array(
        z
          .array(typedLength.extend({ readWith: readWith.optional() }))
          .min(1)
          .max(6),
      )
      .min(1)
      .max(4),
    partTemperature: typedTemperature,
    /** Null where the gauge reads true at its own temperature. */
    gaugeTemperature: typedTemperature.nullable(),
    /** What each reading is sure to; null where nobody said. */
    uncertainty: typedLength.nullable(),
    /** The person was asked about a reading that does not go with the others, and is sure of it. */
    sure: z.literal(true).optional(),
  }),
  /** The readings of a part no longer count: they belonged elsewhere, or the gauge was off. */
  z.strictObject({ type: z.literal('readings-withdrawn'), ...ofBearing, part, reason }),
  /**
   * Journals are ground to one of the spec's undersizes; null for the standard size. A reason stands where a person has
   * said so although, or because, the journal measured another.
   */
  z.strictObject({
    type: z.literal('undersize-declared'),
    version,
    step: z.string(),
    fit: z.string(),
    positions: z.array(z.string()).min(1).max(40),
    undersize: z.string().nullable(),
    reason: reason.optional(),
  }),
  /** A person has said whether marks or readings count at a bearing. */
  z.strictObject({
    type: z.literal('basis-decided'),
    ...ofBearing,
    by: z.enum(['marks', 'readings']),
    reason,
  }),
  /** A person has fixed what goes into one or both halves. */
  z.strictObject({
    type: z.literal('shells-pinned'),
    ...ofBearing,
    upper: pin.nullable(),
    lower: pin.nullable(),
    reason,
  }),
  z.strictObject({ type: z.literal('shells-released'), ...ofBearing }),
  /** What shells are there to choose from; without lines, none were counted. */
  z.strictObject({
    type: z.literal('tray-noted'),
    version,
    step: z.string(),
    fit: z.string(),
    halves: halvesOfTray,
    lines: z.array(trayLine).max(200),
  }),
  /** The width of a flattened plastic thread, read off its card. */
  z.strictObject({
    type: z.literal('thread-read'),
    ...ofBearing,
    width: typedLength,
    readWith: readWith.optional(),
    cardStep: typedLength,
  }),
] as const

export type BearingEvent = z.output<(typeof bearingEvents)[number]>
export type TypedLength = z.output<typeof typedLength>
export type NotedPin = z.output<typeof pin>
export type NotedTrayLine = z.output<typeof trayLine>
