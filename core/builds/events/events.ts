import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'
import { bearingEvents } from './bearing-events.ts'
import { benchEvents } from './bench-events.ts'
import { limitEvents } from './limit-events.ts'
import { turningEvents } from './turning-events.ts'
import { placedEvents } from './placed-events.ts'
import { revisionEvents } from './revision-events.ts'
import { ringEvents } from './ring-events.ts'
import { partEvents } from './part-events.ts'
import { photoEvents } from './photo-events.ts'
import { planEvents } from './plan-events.ts'
import { runEvents } from '../../tightening/index.ts'

const version = z.literal(1)
const reason = z.string().trim().min(1).max(600)
/** As a person typed it; or the cause, where it followed from something else. One of the two. */
const reasonOrCause = { reason: reason.optional(), cause: z.literal('joint-opened').optional() }

/** Thrust washers of the spec's table, both alike. */
export const washersByTable = z.strictObject({ name: z.string().max(80), thickness_nm: z.int() })
/** Two thrust washers chosen by their thickness, and the end float that they leave. */
export const thrustPair = z.strictObject({
  first: washersByTable,
  second: washersByTable,
  float_nm: z.int(),
})
/** The names of the washers that an end float was measured with; none where the gap for them was. */
export const measuredWith = z.array(z.string().max(80)).max(2)
/** In the order in which people name them. */
export const halves = ['upper', 'lower'] as const
export const half = z.enum(halves)

/** One half's shell: its grade and how it came to be chosen. */
const shellChoice = z.strictObject({
  position: z.string(),
  half,
  grade: z.string(),
  by: z.enum(['chart', 'bands', 'person', 'readings', 'tray']),
  /** Why a person chose another shell than the proposed one. */
  reason: reason.nullable(),
  /** The line of the tray it is taken from, null for one that must be ordered; absent where no tray was noted. */
  label: z.string().nullable().optional(),
  /** The spec's undersize that it is for; absent for the standard size. */
  undersize: z.string().optional(),
})

/**
 * Everything that can happen in a build, as past facts, each with the version of its shape. The stream of
 * these is the record; every state, drawing and sheet is computed from it.
 */
export const buildEvent = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('build-started'),
    version,
    spec: z.string(),
    specRevision: z.string(),
    /** SHA-256 of the spec's text, in hexadecimal: the build keeps the spec it was started with. */
    specSha256: z.string().regex(/^[0-9a-f]{64}$/),
    name: z.string().trim().min(1).max(80),
    serial: z.string().trim().max(80),
    /**
     * An apprentice builds it: the steps that the spec marks for it want a second person. Absent in any other
     * build.
     */
    apprentice: z.literal(true).optional(),
  }),
  z.strictObject({
    type: z.literal('marks-noted'),
    version,
    step: z.string(),
    fit: z.string(),
    part: z.enum(['housing', 'journal']),
    /** In the order of the fit's positions; null where a mark is worn away. */
    marks: z.array(z.string().nullable()),
    typed: z.string().max(400),
    /** Where marks that were read again read otherwise: as in `step-reopened`. */
    opens: z.array(z.string()).optional(),
    takenApart: z.literal(true).optional(),
  }),
  z.strictObject({
    type: z.literal('shells-chosen'),
    version,
    step: z.string(),
    fit: z.string(),
    choices: z.array(shellChoice),
  }),
  z.strictObject({
    type: z.literal('half-fitted'),
    version,
    step: z.string(),
    position: z.string(),
    half,
    /** The shell was still to be ordered when it was chosen; the person was asked, and it has arrived. */
    arrived: z.literal(true).optional(),
  }),
  z.strictObject({
    type: z.literal('half-taken-out'),
    version,
    step: z.string(),
    position: z.string(),
    half,
    reason,
  }),
  z.strictObject({ type: z.literal('part-fitted'), version, step: z.string() }),
  z.strictObject({ type: z.literal('part-taken-out'), version, step: z.string(), ...reasonOrCause }),
  z.strictObject({ type: z.literal('bead-laid'), version, step: z.string(), bead: z.string() }),
  z.strictObject({
    type: z.literal('bead-wiped-off'),
    version,
    step: z.string(),
    bead: z.string(),
    ...reasonOrCause,
  }),
  z.strictObject({
    type: z.literal('check-answered'),
    version,
    step: z.string(),
    verdict: z.enum(['good', 'not-good']),
    reading: z.strictObject({ typed: z.string().max(40), length_nm: z.int() }).nullable(),
    readWith: readWith.optional(),
    note: z.string().trim().max(600),
    /** The thrust washers that it was measured with, by name; only where a person said so. */
    fittedWashers: z.string().max(80).optional(),
    /** Those that the spec's table asks for; null where it has none for such a gap. */
    washersByTable: washersByTable.nullable().optional(),
    /** Where washers are chosen by thickness: with which it was measured, and those to fit; null where none of the spec fit. */
    measuredWith: measuredWith.optional(),
    thrustPair: thrustPair.nullable().optional(),
  }),
  ...bearingEvents,
  ...partEvents,
  ...limitEvents,
  ...turningEvents,
  ...placedEvents,
  ...photoEvents,
  ...planEvents,
  ...revisionEvents,
  ...ringEvents,
  ...runEvents,
  ...benchEvents,
  /**
   * A second person has looked at what was done in a step. `procedure` is that of a step that runs one, else
   * null.
   */
  z.strictObject({
    type: z.literal('step-confirmed'),
    version,
    step: z.string(),
    procedure: z.string().nullable(),
    second: z.string().trim().min(1).max(80),
  }),
  /** A second person has looked at it and wants it done again. `procedure` as in `step-confirmed`. */
  z.strictObject({
    type: z.literal('step-sent-back'),
    version,
    step: z.string(),
    procedure: z.string().nullable(),
    second: z.string().trim().min(1).max(80),
    reason,
  }),
  z.strictObject({ type: z.literal('build-finished'), version }),
  /**
   * What is said of a finished build later: what in it is wrong, or was done to the engine since, and why it
   * is said.
   */
  z.strictObject({ type: z.literal('build-amended'), version, text: reason, reason }),
  /** The build no longer counts; what was recorded stays. */
  z.strictObject({ type: z.literal('build-voided'), version, reason }),
])

export type BuildEvent = z.output<typeof buildEvent>
export type Half = z.output<typeof half>
export type ShellChoice = z.output<typeof shellChoice>

/** An event as the record keeps it. */
export const recordedEvent = z.strictObject({
  /** 1, 2, 3 … within the build, without a gap: order is by this, never by the clock. */
  seq: z.int().min(1),
  /** UTC, ISO 8601 with milliseconds: what the machine's clock said. */
  at: z.iso.datetime(),
  person: z.string().trim().min(1).max(80),
  event: buildEvent,
  /** SHA-256 over the canonical text of this entry and the hash before it, in hexadecimal. */
  hash: z.string().regex(/^[0-9a-f]{64}$/),
})

export type RecordedEvent = z.output<typeof recordedEvent>
