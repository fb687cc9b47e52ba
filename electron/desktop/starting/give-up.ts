import { app, dialog } from 'electron'
import { problem, sentenceIn, sentenceOf, type Problem } from '../../../core/problem/index.ts'
import { words } from '../../launch/spoken.ts'
import { leaveSign } from './sign.ts'

/** Takes a line for the log, where there is one by then. */
type Log = (line: string) => void

/**
 * Ends the program with a word: in the log, for the launcher, and to the person. By itself Electron ends for nothing that
 * goes wrong in main: what is thrown while it loads or is rejected later is only printed, and leaves a process without a
 * window (lib/browser/init.ts; shell/browser/electron_browser_main_parts.cc, `warn-with-error-code`). The sign comes before
 * the box, which stays until somebody closes it. Before Electron is ready the box is a line on stderr on Linux
 * (shell/browser/ui/message_box_gtk.cc), elsewhere a box.
 */
export function giveUp(why: Problem, log: Log): void {
  const sentence = sentenceIn(words, why)
  log(`gave up: ${sentenceOf(why)}`)
  leaveSign(process.env.BEDPLATE_SIGN, { kind: 'refused', why })
  console.error(sentence)
  dialog.showErrorBox('Bedplate', sentence)
  app.exit(1)
}

/** For a fault of the program's own, which nobody can mend by what they do. */
export function giveUpOnFault(error: unknown, log: Log): void {
  log(`fault in main: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`)
  giveUp(problem('own-fault', {}), log)
}
