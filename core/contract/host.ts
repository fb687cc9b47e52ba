import { z } from 'zod'
import type { Words } from '../words/index.ts'
import { messageOf, nothing, problemMessage } from './problem-message.ts'

const doctorLine = z.strictObject({
  subject: z.enum(['program', 'host', 'data-folder', 'disk', 'record', 'photos', 'backup', 'shop']),
  /** Good; worth a look; or the reason why something does not work. */
  state: z.enum(['good', 'look', 'bad']),
  says: messageOf<Words['doctor']['lines']>(),
})
export type DoctorLine = z.output<typeof doctorLine>

/** Requests about the program itself. */
export const hostRequests = {
  /** Also the sign that somebody is there: a window asks about once a minute. */
  'host.read': {
    input: nothing,
    output: z.strictObject({
      host: z.enum(['desktop', 'local']),
      /** Why this host and not the other. */
      why: messageOf<Words['phrases']>(),
      version: z.string(),
      dataFolder: z.string(),
      /**
       * Why the record cannot be used; null when it can. Where there is a problem, the host answers `host.read`,
       * `host.doctor`, `backups.list` and `backups.restore`, and refuses everything else with this problem.
       */
      problem: problemMessage.nullable(),
    }),
  },
  /** How the program stands, in words that can be read out over the phone. */
  'host.doctor': { input: nothing, output: z.array(doctorLine) },
  /**
   * The page in the window as a PDF, where the desktop host asks to put it: its path, or null when no place was chosen. The
   * local host refuses with `pdf-by-browser`: there the browser’s own print makes the PDF.
   */
  'sheet.pdf': {
    input: z.strictObject({ paper: z.enum(['A4', 'Letter']), fileName: z.string().max(200) }),
    output: z.strictObject({ path: z.string().nullable() }),
  },
} as const
