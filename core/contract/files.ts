import { z } from 'zod'
import { problemMessage } from './problem-message.ts'

/** A file that the program was asked to open. */
const openedFile = z.strictObject({
  /** Counted from 1, in the order in which they were opened. */
  number: z.int().min(1),
  fileName: z.string(),
  content: z.discriminatedUnion('kind', [
    /** To be taken in by `builds.import`. */
    z.strictObject({ kind: z.literal('build'), text: z.string() }),
    /** A file of a spec, to be taken into the library by `library.import`. */
    z.strictObject({ kind: z.literal('spec'), text: z.string() }),
    /** A spec, which is among the engines until the program ends. */
    z.strictObject({ kind: z.literal('engine'), id: z.string(), name: z.string() }),
    z.strictObject({ kind: z.literal('refused'), problem: problemMessage }),
  ]),
})
export type OpenedFile = z.output<typeof openedFile>

/** Requests about files that come from outside the window, and about those that it makes. */
export const fileRequests = {
  /**
   * The next file that the program was asked to open, by its command line or by the system. `after` is the number of the last
   * one that the window has dealt with. Where more may come, it is answered only when one does or another window asks; `more`
   * is false where none will.
   */
  'files.opened': {
    input: z.strictObject({ after: z.int().min(0) }),
    output: z.strictObject({ file: openedFile.nullable(), more: z.boolean() }),
  },
  /**
   * Puts a text into a file where the desktop host's person chooses, one file after the other. It is answered when the file is on
   * disk, with its path, or with null when no place was chosen; one that could not be written is refused. The local host refuses
   * with `save-by-browser`: there the browser saves, and it alone knows what became of that.
   */
  'files.save': {
    input: z.strictObject({
      fileName: z
        .string()
        .max(200)
        .regex(/\.(bedplate|bedplate-spec|csv|svg)$/),
      text: z.string(),
    }),
    output: z.strictObject({ path: z.string().nullable() }),
  },
} as const
