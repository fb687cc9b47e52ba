import { z } from 'zod'
import type { Words } from '../words/index.ts'
import { messageOf, nothing, problemMessage } from './problem-message.ts'

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
  /** Whether it is of this bench; several may share a second folder. */
  own: z.boolean(),
  /** How many things in it were not as confirmed when it was made; 0 for a sound one. */
  broken: z.int(),
})

const backups = z.strictObject({
  /** Those of this bench first, the newest of each first. Each was opened and verified when it was made. */
  backups: z.array(backupLine),
  /** Where each backup is put a second time; null for nowhere. */
  secondFolder: z.string().nullable(),
  running: z.boolean(),
  /** Why the last backup is missing, or missing in the second folder; null when all is well. */
  trouble: problemMessage.nullable(),
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
    /** How many heads that were given out, on sheets, exports and backups, are the builds' own still. */
    witnesses: z.int(),
    /** Whether making the lists again from the entries would put some of it right. */
    lists: z.boolean(),
    /** What is not as it was confirmed, empty when all is. */
    breaks: z.array(z.strictObject({ build: z.string(), number: z.string(), problem: problemMessage })),
  }),
])
export type Verification = z.output<typeof verification>

/** The largest file that is held against the record. */
export const mostComparedBytes = 32 * 1024 * 1024

const comparison = z.strictObject({
  /** One for each build that was looked for, or for the code. */
  lines: z.array(
    z.strictObject({ good: z.boolean(), says: messageOf<Words['record']['compare']['lines']>() }),
  ),
})
export type HeldAgainst = z.output<typeof comparison>

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
  /**
   * Holds an export, a backup, or the head code in a file's name or from a sheet, against the record. `base64` is the
   * file's content, null where only the name or the code is there.
   */
  'verification.compare': {
    input: z.strictObject({ name: z.string().max(300), base64: z.base64().nullable() }),
    output: comparison,
  },
  /** Somebody prints or saves a sheet of the build: its head is kept, to be held against the build later. */
  'verification.keep-head': { input: z.strictObject({ build: z.uuid() }), output: nothing },
  /** Makes the list of builds, and the words they are found by, again from the entries; answers how many were not right. */
  'record.rebuild-lists': { input: nothing, output: z.strictObject({ changed: z.int() }) },
  /** Writes a verified copy of the record as it is in memory into a folder; among the backups for null. */
  'record.copy': {
    input: z.strictObject({ folder: z.string().max(1000).nullable() }),
    output: z.strictObject({ file: z.string(), builds: z.int(), entries: z.int() }),
  },
  /** Where a record is missing: begins with an empty one. Nothing that is there is overwritten. */
  'record.begin-empty': { input: nothing, output: nothing },
  'verification.stop': { input: nothing, output: verification },
} as const
