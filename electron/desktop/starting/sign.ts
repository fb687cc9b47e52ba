import { renameSync, writeFileSync } from 'node:fs'
import type { Problem } from '../../../core/problem/index.ts'

/** What the launcher waits for: the window was shown, or why none will be. */
export type Sign = { readonly kind: 'shown' } | { readonly kind: 'refused'; readonly why: Problem }

/**
 * Leaves a sign where the launcher looks for one: in the file that `BEDPLATE_SIGN` names, whole or not at all. That a window
 * came up cannot be known by a clock, since a first start takes as long as the machine needs.
 */
export function leaveSign(file: string | undefined, sign: Sign): void {
  if (file === undefined || file === '') return
  try {
    writeFileSync(`${file}.new`, sign.kind === 'shown' ? 'shown' : `refused: ${JSON.stringify(sign.why)}`, {
      mode: 0o600,
    })
    renameSync(`${file}.new`, file)
  } catch {
    // nobody waits there any more
  }
}
