import { z } from 'zod'
import { sketch } from '../drafts/index.ts'
import { pxPerMmBounds, readingDistances } from '../layout/index.ts'
import { instruments } from '../instrument/index.ts'
import { benchTorqueUnits, lengthUnits } from '../quantity/index.ts'
import { grips } from '../tightening/index.ts'
import { languages } from '../words/index.ts'

/** How many builds are remembered with the way they were looked at, and with what is begun in them. */
export const mostKeptBuilds = 50

/** Where a wrench's handle stands and what it has come to in one pull, before it is confirmed. */
const handleState = z.strictObject({
  /** Degrees clockwise from straight up, on the face as it is first drawn; at least 0, less than 360. */
  standing: z.number().min(0).lt(360),
  /** Degrees it can swing in one go; null where nothing is in its way. */
  room: z.number().min(0).max(360).nullable(),
  grip: z.enum(grips),
  /** The pull that the angle reached, in degrees, and the counted swings belong to. */
  pull: z.string().max(200),
  reached: z.number().min(0).max(3600).nullable(),
  swings: z.int().min(0).max(1000),
})
export type HandleState = z.output<typeof handleState>

/** An order of a person's own while it is made: what was typed for each order of a procedure, and which one is shown. */
const orderDraftState = z.strictObject({
  procedure: z.string().max(200),
  chosen: z.string().max(200),
  typed: z.record(z.string().max(200), z.string().max(2000)),
})
export type OrderDraftState = z.output<typeof orderDraftState>

const view = z.strictObject({ from: z.enum(['above', 'below']), turn: z.literal([0, 1, 2, 3]) })

/** How fast a prompt is said: slowly, as the voice is made, fast. */
export const speechRates = [0.7, 1, 1.3] as const

/** What a bench keeps between starts: how things are shown, and who stands there. */
export const preferences = z.strictObject({
  person: z.string().trim().max(80),
  torqueUnit: z.enum(benchTorqueUnits),
  lengthUnit: z.enum(lengthUnits),
  theme: z.enum(['as-the-system', 'light', 'dark']),
  /** Distance from which the tightening view is read, in metres. */
  readingDistance: z.literal(readingDistances),
  /** Pixels to a millimetre of this bench's screen, as measured against a card; null while nobody has. */
  screenPxPerMm: z.number().min(pxPerMmBounds.least).max(pxPerMmBounds.most).nullable(),
  /** How the faces of the builds worked on last were looked at, the latest first. */
  views: z
    .array(z.strictObject({ build: z.uuid(), faces: z.record(z.string().max(200), view) }))
    .max(mostKeptBuilds),
  /** What is begun and not confirmed yet in the builds worked on last, the latest first. */
  unfinished: z
    .array(
      z.strictObject({
        build: z.uuid(),
        handle: handleState,
        order: orderDraftState.nullable(),
        /** The step that a person chose to work on next, by its id; absent where the program says which. */
        step: z.string().max(200).optional(),
      }),
    )
    .max(mostKeptBuilds),
  /** Whether keys of one character do anything on the drawing (WCAG 2.1.4); those of a reading always do. */
  letterKeys: z.boolean(),
  /** The instruments on a serial line that this bench knows. */
  instruments,
  /** Whether prompts are said aloud as well as shown. */
  speaks: z.boolean(),
  /** How fast: 1 is the voice's own speed. */
  speechRate: z.literal(speechRates),
  /** The voice that a person chose, by its name; null while the program chooses. */
  voice: z.string().max(200).nullable(),
  /** The language that a person chose; null for that of the system. */
  language: z.enum(languages).nullable(),
  /** The build that lay open; the window goes back to it at the next start. */
  atBuild: z.uuid().nullable(),
  /** The first points of an outline or a bead in a draft, until there are enough of them to be in it; null for none. */
  sketch: z.strictObject({ draft: z.uuid(), sketch }).nullable().optional(),
  /** The build that has a note of the help beside each step, and the step whose note was read; null where nobody is guided. */
  guide: z
    .strictObject({ build: z.uuid(), read: z.string().max(200).nullable() })
    .nullable()
    .optional(),
})
export type Preferences = z.output<typeof preferences>

/** Those of a bench that nobody has changed. */
export const firstPreferences: Preferences = {
  person: '',
  torqueUnit: 'N·m',
  lengthUnit: 'mm',
  theme: 'as-the-system',
  readingDistance: 1,
  screenPxPerMm: null,
  views: [],
  unfinished: [],
  letterKeys: true,
  instruments: [],
  speaks: false,
  speechRate: 1,
  voice: null,
  language: null,
  atBuild: null,
}
