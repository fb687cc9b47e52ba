import { z } from 'zod'
import { nothing, toldProblem } from './problem-message.ts'

const backupLine = z.strictObject({
  /** The file's name; restoring asks for it. */
  name: z.string(),
  at: z.iso.datetime(),
  builds: z.int(),
  entries: z.int(),
  /** Over the heads of all builds in it, 16 hexadecimal digits. */
  head: z.string(),
  sizeBytes: z.int(),
  place: z.enum(['data-folder', 'second-folder']),
})

const backups = z.strictObject({
  /** Newest first. Each was opened and walked when it was made; what was not sound is not here. */
  backups: z.array(backupLine),
  /** Where each backup is put a second time; null for nowhere. */
  secondFolder: z.string().nullable(),
  running: z.boolean(),
  /** Why the last backup is missing, or missing in the second folder; null when all is well. */
  trouble: toldProblem.nullable(),
})
export type BackupList = z.output<typeof backups>

/** The build that is verified alone; null for the whole archive. */
const build = z.uuid().nullable()

const verification = z.discriminatedUnion('state', [
  z.strictObject({ state: z.literal('none') }),
  z.strictObject({ state: z.literal('running'), build, builds: z.int(), of: z.int() }),
  z.strictObject({ state: z.literal('stopped'), build }),
  z.strictObject({
    state: z.literal('done'),
    build,
    at: z.iso.datetime(),
    builds: z.int(),
    entries: z.int(),
    /** Of a single build the head code on its sheet, else over the heads of all: 16 hexadecimal digits. */
    head: z.string(),
    /** What is not as it was confirmed, each with its sentence; empty when all is. */
    breaks: z.array(z.strictObject({ build: z.string(), number: z.string(), problem: toldProblem })),
  }),
])
export type Verification = z.output<typeof verification>

/** Requests about the record as a whole: its backups, and whether all of it is as it was confirmed. */
export const recordRequests = {
  'backups.list': { input: nothing, output: backups },
  /** Makes one now, and answers when it has been checked. One is made by itself each day and after each finished build. */
  'backups.make': { input: nothing, output: backups },
  /** Where each backup is put a second time: another disk, a share. Null for nowhere. */
  'backups.keep-in': { input: z.strictObject({ folder: z.string().max(1000).nullable() }), output: backups },
  /**
   * Puts a backup in the place of the record. The present file stays in the data folder under the name `kept`; null where
   * there was none. Everything that the window holds is then out of date: it asks for all of it again.
   */
  'backups.restore': {
    input: z.strictObject({ name: z.string().max(200) }),
    output: z.strictObject({ kept: z.string().nullable() }),
  },
  /** Follows the chain of a build, or of all for null, from the first entry on. One at a time; a new one ends the last. */
  'verification.start': { input: z.strictObject({ build }), output: verification },
  /** How far it has come. Ask again every second or so while it runs. */
  'verification.read': { input: nothing, output: verification },
  'verification.stop': { input: nothing, output: verification },
} as const
