import { z } from 'zod'
import { benchName, recordedEvent } from '../builds/index.ts'
import { languages } from '../words/index.ts'
import { buildLine } from './build-line.ts'
import { shopCut } from './shop-cut.ts'

const mebi = 1024 * 1024

/** What of an export is not photos; a build of two thousand fasteners in six passes has some six million. */
const mostOfEntries = 32 * mebi

/** The longest export that is imported: with as many photos as a build may have, each as large as it may be, in base64. */
export const mostExportCharacters = mostOfEntries + 96 * mebi

/** What of a build is given as a table. */
export const tables = ['pulls', 'readings', 'parts'] as const
export type BuildTable = (typeof tables)[number]

const file = z.strictObject({
  /** To save it under; holds the build's number and head code. */
  fileName: z.string(),
  text: z.string(),
})

/** An entry; its event is null where only a newer program knows it. */
const entry = recordedEvent.extend({ event: recordedEvent.shape.event.nullable() })
export type ReadEntry = z.output<typeof entry>

/** How many photos neither the file has as they were recorded nor the record here; absent for none. The build is taken in. */
const photosLost = z.int().min(1).optional()

const imported = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('added'), line: buildLine, photosLost }),
  /** Was here already, entry for entry. */
  z.strictObject({ kind: z.literal('known'), line: buildLine, photosLost }),
  /** Continued elsewhere: `added` entries more are here now. */
  z.strictObject({ kind: z.literal('continued'), line: buildLine, added: z.int(), photosLost }),
  /** The build here has `behind` entries more than the file. Nothing was changed. */
  z.strictObject({ kind: z.literal('older'), line: buildLine, behind: z.int() }),
  /** From entry `at` on, the build was continued differently here and there. Nothing was changed. */
  z.strictObject({
    kind: z.literal('fork'),
    line: buildLine,
    at: z.int(),
    here: entry,
    there: entry,
    /** The spec by which both went until then. */
    specText: z.string(),
  }),
])
export type ImportResult = z.output<typeof imported>

/** A build that was found; in a shop, its number is as counted by the bench that began it. */
const foundLine = buildLine.extend({
  /** Where it is among the benches of the shop; absent where the bench belongs to none, or only its own record was asked. */
  at: z
    .strictObject({
      /** The bench that has it. */
      bench: benchName,
      isHere: z.boolean(),
      /** When the archive had it so, by the clock of the server; of what only this bench has, its last entry. */
      asOf: z.iso.datetime(),
      /** Continued at two benches apart, and not settled. */
      isForked: z.boolean(),
    })
    .optional(),
})
export type FoundLine = z.output<typeof foundLine>

/** Requests about the archive: finding builds, taking them elsewhere and taking them in. */
export const archiveRequests = {
  /**
   * Builds by the words said of them, newest first, fifty at a time: those of this bench's record, or of all benches of the shop, as far as
   * its archive answers.
   */
  'builds.find': {
    input: z.strictObject({
      /** As typed; each word must be the beginning of a word of the build. Empty finds all. */
      words: z.string().max(200),
      /** What the words must have been said of; of anything when absent. */
      kind: z.enum(['engine', 'number', 'name', 'serial', 'person', 'part', 'flag']).optional(),
      /** First and last day on which the build was started, both included, by UTC. */
      from: z.iso.date().optional(),
      to: z.iso.date().optional(),
      state: z.enum(['open', 'finished', 'voided', 'flagged', 'forked']).optional(),
      of: z.enum(['here', 'shop']).default('here'),
      /** In a shop, at which bench; at any when absent. */
      bench: z.string().optional(),
      /** For the next page: the last build of this one. */
      before: z.uuid().optional(),
      /** Of the names of engines and steps. The words are looked for in whatever language. */
      language: z.enum(languages).default('en'),
    }),
    output: z.strictObject({
      lines: z.array(foundLine),
      more: z.boolean(),
      /** Absent where the bench belongs to no shop, or only its own record was asked. */
      shop: z.strictObject({ cut: shopCut }).optional(),
    }),
  },
  /** The whole build with its spec as one file, which verifies wherever it is imported. */
  'builds.export': { input: z.strictObject({ build: z.uuid() }), output: file },
  /**
   * Imports an exported build; `text` is the file's. Refused if a byte of it was changed. The window looks at the size of
   * the file first: one of more than `mostExportCharacters` bytes is not even read.
   */
  'builds.import': {
    input: z.strictObject({ text: z.string() }),
    output: imported,
    // As JSON within JSON, every quotation mark takes two; photos have none.
    mostBytes: mostExportCharacters + mostOfEntries,
  },
  /** Every pull, every reading of a gauge or wrench, or what became of each part, as a table for a spreadsheet. */
  'builds.csv': {
    input: z.strictObject({ build: z.uuid(), table: z.enum(tables) }),
    output: file,
  },
} as const
