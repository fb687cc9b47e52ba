import type { Outcome } from '../problem/index.ts'
import { z } from 'zod'
import { buildCommand, recordedEvent, samples } from '../builds/index.ts'
import { archiveRequests } from './archive.ts'
import { recordRequests } from './backups.ts'
import { buildLine } from './build-line.ts'
import { draftRequests, libraryLine } from './drafts.ts'
import { fileRequests } from './files.ts'
import { hostRequests } from './host.ts'
import { peopleRequests } from './people.ts'
import { photoRequests } from './photos.ts'
import { pictureRequests } from './pictures.ts'
import { practiceRequests } from './practice.ts'
import { preferences } from './preferences.ts'
import { nothing, problemMessage } from './problem-message.ts'
import { languages } from '../words/index.ts'
import { shopRequests } from './shop.ts'
import { buildBenches, storedBuild } from './stored-build.ts'
import { wrenchRequests } from './wrenches.ts'

const engineLine = z.strictObject({
  id: z.string(),
  name: z.string(),
  summary: z.string(),
  revision: z.string(),
  demo: z.boolean(),
  /** Doubts that the audit has about it; a spec with a fault is listed with `faults` and cannot be built from. */
  doubts: z.array(problemMessage),
  /** Names of the steps that a second person looks at where an apprentice builds. */
  lookedAt: z.array(z.string()),
  faults: z.array(problemMessage),
})
export type EngineLine = z.output<typeof engineLine>

interface RequestForm {
  readonly input: z.ZodType
  readonly output: z.ZodType
  /** The longest input, as JSON in UTF-8, where it may be longer than `mostInputBytes`. */
  readonly mostBytes?: number
}

/** The longest input of a request that names no limit of its own, as JSON in UTF-8. */
const mostInputBytes = 1024 * 1024

/**
 * Everything that the window can ask of its host. Both sides' types come from this table; input and output are parsed on
 * both ways. A request whose name says a verb other than list, find, open or read changes the record.
 */
export const contract = {
  ...hostRequests,
  'preferences.read': { input: nothing, output: preferences },
  'preferences.keep': { input: preferences.partial(), output: preferences },
  /** With names and findings in this language, as far as the specs have it. */
  'engines.list': {
    input: z.strictObject({ language: z.enum(languages).default('en') }),
    output: z.array(engineLine),
  },
  'engines.read': {
    input: z.strictObject({ id: z.string() }),
    output: z.strictObject({ specText: z.string() }),
  },
  /** The builds started last, two hundred at most, with the names of engines and steps in the language. */
  'builds.list': {
    input: z.strictObject({ language: z.enum(languages).default('en') }),
    output: z.array(buildLine),
  },
  'builds.start': {
    input: z.strictObject({
      engine: z.string(),
      name: z.string().max(200),
      serial: z.string().max(200),
      person: z.string().max(200),
      /** An apprentice builds it. So it is anyway where the bench keeps the person as one. */
      apprentice: z.boolean().default(false),
    }),
    output: storedBuild,
  },
  /** Makes one of the demo builds, its texts in the language, and opens it. Refused with `sample-not-needed` where `samplesLeft` does not have it. */
  'builds.try': {
    input: z.strictObject({ sample: z.enum(samples), language: z.enum(languages).default('en') }),
    output: storedBuild,
  },
  'builds.open': { input: z.strictObject({ build: z.uuid() }), output: storedBuild },
  /**
   * The entries after `after`, the last one that the window has: what another window has confirmed meanwhile; a revision of the
   * library that is newer than the build's, as `storedBuild` has it; and how it stands among the benches now, absent in practice.
   * Refused with `build-moved-on` where the build has no such entry.
   */
  'builds.since': {
    input: z.strictObject({ build: z.uuid(), after: z.int().min(0) }),
    output: z.strictObject({
      events: z.array(recordedEvent),
      newer: libraryLine.optional(),
      benches: buildBenches.optional(),
    }),
  },
  /**
   * Decides on a command and appends what follows from it; `after` is the last entry the window has seen. A refusal names steps and parts
   * in the language.
   */
  'builds.act': {
    input: z.strictObject({
      build: z.uuid(),
      after: z.int().min(0),
      person: z.string().max(200),
      command: buildCommand,
      language: z.enum(languages).default('en'),
    }),
    output: z.strictObject({ events: z.array(recordedEvent) }),
  },
  /**
   * Goes on by a newer revision of the library from here on: see `takeRevision`. Another window that shows the build has to open it again.
   */
  'builds.take-revision': {
    input: z.strictObject({
      build: z.uuid(),
      after: z.int().min(0),
      person: z.string().max(200),
      revision: z.int().min(1),
      reason: z.string().max(600),
      opens: z.array(z.string()).max(1000),
      takenApart: z.literal(true).optional(),
    }),
    output: storedBuild,
  },
  ...archiveRequests,
  ...draftRequests,
  ...fileRequests,
  ...photoRequests,
  ...pictureRequests,
  ...recordRequests,
  ...peopleRequests,
  ...wrenchRequests,
  ...practiceRequests,
  ...shopRequests,
} as const satisfies Record<string, RequestForm>

export type RequestName = keyof typeof contract

/** The longest input that a host takes for a request, as JSON in UTF-8. */
export function mostBytesOf(name: RequestName): number {
  const { mostBytes = mostInputBytes }: RequestForm = contract[name]
  return mostBytes
}

export type Input<Name extends RequestName> = z.input<(typeof contract)[Name]['input']>
export type ParsedInput<Name extends RequestName> = z.output<(typeof contract)[Name]['input']>
export type Output<Name extends RequestName> = z.output<(typeof contract)[Name]['output']>

/** What comes back over the wire: thrown errors lose all but their message on the way, so none are thrown. */
export type Answer<Name extends RequestName> = Outcome<Output<Name>>

/** How the window asks; tests and the gallery give it a twin in memory with the same parsing. */
export interface Client {
  request<Name extends RequestName>(name: Name, input: Input<Name>): Promise<Answer<Name>>
}
