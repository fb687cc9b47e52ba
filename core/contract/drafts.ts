import { z } from 'zod'
import { bareParameters, draftAct, draftEntry } from '../drafts/index.ts'
import { families } from '../engine/index.ts'
import { languages } from '../words/index.ts'
import { nothing } from './problem-message.ts'

const person = z.string().max(200)
const family = z.enum(families)
const engineId = z.string().max(60)

const draftLine = z.strictObject({
  id: z.uuid(),
  /** The engine's id. */
  engine: z.string(),
  /** The revision that it becomes. */
  revision: z.int(),
  name: z.string(),
  family,
  begunBy: z.string(),
  begunAt: z.iso.datetime(),
  lastAt: z.iso.datetime(),
  state: z.enum(['open', 'published', 'discarded']),
  /** How many edits stand. */
  edits: z.int(),
  /** What the audit says of it now: how many faults and doubts. */
  faults: z.int(),
  doubts: z.int(),
  /** Whether the source names a second person who checked it. */
  isChecked: z.boolean(),
  entries: z.int(),
})
export type DraftLine = z.output<typeof draftLine>

/** A draft whole: what it was begun with, and every entry since; `replayDraft` makes its document of them. */
const openedDraft = z.strictObject({ line: draftLine, base: z.string(), entries: z.array(draftEntry) })
export type OpenedDraft = z.output<typeof openedDraft>

export const libraryLine = z.strictObject({
  engine: z.string(),
  name: z.string(),
  family,
  cylinders: z.int(),
  /** Counted on this bench; 0 for an engine of the folder of specs, which has none. */
  revision: z.int(),
  /** As the spec itself calls it. */
  revisionName: z.string(),
  demo: z.boolean(),
  publishedBy: z.string().nullable(),
  publishedAt: z.iso.datetime().nullable(),
  enteredBy: z.string().nullable(),
  checkedBy: z.string().nullable(),
  /** How many builds were begun with this text. */
  builds: z.int(),
  /** What the spec calls it in other languages; absent where it has one name. */
  alsoCalled: z.array(z.string()).optional(),
})
export type LibraryLine = z.output<typeof libraryLine>

/** What a draft is begun from. */
const origin = z.discriminatedUnion('kind', [
  /** A copy, for another engine. */
  z.strictObject({ kind: z.literal('copy'), engine: engineId, revision: z.int() }),
  /** The next revision of the same engine, from its latest one. */
  z.strictObject({ kind: z.literal('revision'), engine: engineId }),
  z.strictObject({ kind: z.literal('bare'), parameters: bareParameters }),
])
export type DraftOrigin = z.output<typeof origin>

/** The longest text of a spec with its edits, as JSON in UTF-8. */
const mostDraftBytes = 24 * 1024 * 1024

/** Requests about specs that people write, and about the library that these go into. */
export const draftRequests = {
  /** Those that are open or were discarded, the one begun last first. */
  'drafts.list': { input: nothing, output: z.array(draftLine) },
  'drafts.begin': {
    input: z.strictObject({
      person,
      /** Of the engine; of a revision it stays as it is. */
      name: z.string().max(200),
      /** The manual that the numbers come from. */
      from: z.string().max(1000),
      origin,
    }),
    output: openedDraft,
  },
  'drafts.open': { input: z.strictObject({ draft: z.uuid() }), output: openedDraft },
  /**
   * An edit, an undo and so on; `after` is the last entry that the window has seen. Answers with the entry that follows from it.
   * Refused with `draft-moved-on` where another window was quicker: open the draft again then.
   */
  'drafts.act': {
    input: z.strictObject({ draft: z.uuid(), after: z.int().min(0), person, act: draftAct }),
    output: draftEntry,
    mostBytes: mostDraftBytes,
  },
  /** Puts the draft into the library as a revision, and closes it. Refused with `draft-faulty` while the audit finds faults. */
  'drafts.publish': {
    input: z.strictObject({ draft: z.uuid(), after: z.int().min(0), person }),
    output: libraryLine,
  },
  /** The latest revision of each engine, and the engines of the folder of specs, with the names of these in the language. */
  'library.list': {
    input: z.strictObject({ language: z.enum(languages).default('en') }),
    output: z.array(libraryLine),
  },
  /** All revisions of an engine, the latest first. */
  'library.revisions': { input: z.strictObject({ engine: engineId }), output: z.array(libraryLine) },
  /** Revision 0 is the engine of the folder. */
  'library.read': {
    input: z.strictObject({ engine: engineId, revision: z.int() }),
    output: z.strictObject({ specText: z.string() }),
  },
  /** A revision as a file, which `library.import` takes in anywhere. */
  'library.export': {
    input: z.strictObject({ engine: engineId, revision: z.int() }),
    output: z.strictObject({ fileName: z.string(), text: z.string() }),
  },
  /** Takes in a file of a spec; `text` is the file's. Refused if a byte of the spec was changed, or the audit finds faults. */
  'library.import': {
    input: z.strictObject({ text: z.string(), person }),
    output: z.strictObject({ kind: z.enum(['added', 'known']), line: libraryLine }),
    mostBytes: mostDraftBytes,
  },
} as const
