import { z } from 'zod'
import { advise } from './advice.ts'
import {
  gapText,
  idText,
  recordedName,
  sentenceText,
  shownName,
  sizeText,
  temperatureText,
  toleranceText,
} from './text.ts'

/**
 * A range of sizes: over `over`, up to and including `upTo`. The least of all bands also takes its own lower edge. A text is a size
 * with its tolerance class, `"62 mm H6"`.
 */
export const band = z.union([
  z.strictObject({ over: sizeText, upTo: sizeText }),
  toleranceText.transform(({ least, most }) => ({ over: least, upTo: most })),
])

/** A size code as it is stamped: one to three characters without a space. */
const markText = z.string().regex(/^[^\s,;]{1,3}$/, advise('mark-characters'))

const markedPart = z.strictObject({
  /** Where the marks are read, for example "Case, left of the front flange". */
  name: shownName,
  readAt: sentenceText.optional(),
  /** What the drawing says of all of them together, where it names a tolerance class: the bands must then fill its limits. */
  drawn: toleranceText.optional(),
  marks: z
    .array(z.strictObject({ mark: markText, band: band.optional() }))
    .min(1)
    .max(40),
})

/** A way of filling an area that stays apart from the others without colour. */
export const patterns = [
  'plain',
  'bars',
  'dots',
  'slant',
  'grid',
  'waves',
  'crosses',
  'steps',
  'rings',
] as const

const gradeText = z.string().regex(/^[A-Z0-9]{1,3}$/, advise('grade-characters'))

/** A shell's wall-thickness class. Listed from the thinnest wall to the thickest: neighbours are neighbours in the list. */
export const grade = z.strictObject({
  grade: gradeText,
  colour: z.string().regex(/^#[0-9A-F]{6}$/, advise('colour-digits')),
  pattern: z.enum(patterns),
  /** Wall at the crown. */
  wall: band.optional(),
})

const chartCell = z.strictObject({
  housing: markText,
  journal: markText,
  upper: gradeText,
  lower: gradeText,
  /** The positions this cell holds for, where saddles differ; all of the fit when absent. */
  positions: z.array(idText).min(1).max(40).optional(),
})

/** Linear expansion in 10⁻⁶ per kelvin. */
const expansion = z.number().positive().max(60)

export const fit = z.strictObject({
  id: idText,
  name: shownName,
  kind: z.enum(['main', 'big-end', 'balance']),
  /**
   * How the housing is split, which is how its halves are called. Everywhere else in a spec, and in the entries of a build, the left
   * half stands as `upper` and the right one as `lower`.
   */
  split: z.enum(['upper-lower', 'left-right']).default('upper-lower'),
  /** Ids of saddles, rods or balance bearings, in the order in which the marks are stamped. */
  positions: z.array(idText).min(1).max(40),
  housing: markedPart,
  journal: markedPart,
  grades: z.array(grade).min(1).max(24),
  chart: z.array(chartCell).min(1).max(2000).optional(),
  mixing: z.strictObject({
    /** Whether the halves of one bearing may be of neighbouring grades. */
    neighbours: z.boolean(),
    /** The half that takes the thicker wall of two. */
    thicker: z.enum(['upper', 'lower', 'either']),
  }),
  clearance: z.strictObject({
    least: gapText,
    most: gapText,
    /** The middle of least and most when absent. */
    target: gapText.optional(),
    serviceLimit: gapText.optional(),
  }),
  /** The thinnest wall with which a used shell of the standard size may go back. */
  wornWall: sizeText.optional(),
  /**
   * Reground journals: what comes off the journal's diameter. `walls` are those of the undersize's grades as they are printed, and
   * then there are no others; without them every wall is thicker by half of the undersize, and so is the worn one.
   */
  undersizes: z
    .array(
      z.strictObject({
        name: recordedName,
        undersize: sizeText,
        walls: z
          .array(z.strictObject({ grade: gradeText, wall: band }))
          .min(1)
          .max(24)
          .optional(),
        wornWall: sizeText.optional(),
      }),
    )
    .max(20)
    .default([]),
  measuring: z
    .strictObject({
      planes: z.int().min(1).max(4),
      directions: z.int().min(1).max(6),
      outOfRound: sizeText.optional(),
      taper: sizeText.optional(),
      /** The length that the taper is allowed for, 25 mm say; over all of the journal or bore when absent. */
      taperPer: sizeText.optional(),
      /** From the first measuring plane to the last. */
      planesApart: sizeText.optional(),
    })
    .optional(),
  seating: z
    .strictObject({
      /** Whether an upper and a lower shell are the same part. */
      halves: z.enum(['alike', 'differ']),
      /** How each half lies: where its groove, oil hole and tang go. */
      upper: sentenceText,
      lower: sentenceText,
    })
    .optional(),
  warm: z
    .strictObject({
      housingExpansion: expansion,
      journalExpansion: expansion,
      shellExpansion: expansion,
      oilTemperature: temperatureText,
    })
    .optional(),
})

/**
 * End float of the crank: which washers or thrust shells a measured float asks for, where the manual has a table; gaps between rows
 * are gaps. Without floats they are chosen by their thickness.
 */
export const endFloat = z.strictObject({
  saddle: idText,
  least: gapText,
  most: gapText,
  washers: z
    .array(
      z.strictObject({
        name: recordedName,
        thickness: sizeText,
        floatFrom: gapText.optional(),
        floatTo: gapText.optional(),
      }),
    )
    .max(40)
    .default([]),
  /** Whether the two that are chosen by thickness may differ; both are alike when absent. */
  mixed: z.boolean().optional(),
})

export const sideClearance = z.strictObject({ least: gapText, most: gapText })

export type Band = z.output<typeof band>
export type MarkedPart = z.output<typeof markedPart>
export type Grade = z.output<typeof grade>
export type Pattern = (typeof patterns)[number]
export type ChartCell = z.output<typeof chartCell>
export type Fit = z.output<typeof fit>
export type EndFloat = z.output<typeof endFloat>
