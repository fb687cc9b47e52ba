import { lstatSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Stands in the window's folder while its program closes the record: by then it shows no window any more. */
const closingMark = 'closing'

/** As long as a large record takes to be closed on a slow disk, and then some. */
const mostTries = 120

export const betweenTriesMs = 500

/**
 * What a start does that was refused the lock of its window's folder. Electron says only that it was refused: because a
 * Bedplate runs, which hears of this start and comes to the front; because one is just closing, which will not show a
 * window again; or because the disk knows no such locks (shell/browser/api/electron_api_app.cc,
 * `RequestSingleInstanceLock`), where the record's own lock decides.
 */
export function afterRefusedLock(found: {
  readonly isClosing: boolean
  readonly isHeld: boolean
  readonly tries: number
}): 'leave' | 'try-again' | 'go-on' | 'give-up' {
  if (!found.isHeld) return 'go-on'
  if (!found.isClosing) return 'leave'
  return found.tries < mostTries ? 'try-again' : 'give-up'
}

export function markClosing(folder: string): void {
  try {
    writeFileSync(join(folder, closingMark), '', { mode: 0o600 })
  } catch {
    // a start meanwhile ends without a window, as it would without the mark
  }
}

/** Called by the start that has the lock: a program that was killed while closing leaves its mark. */
export function unmarkClosing(folder: string): void {
  rmSync(join(folder, closingMark), { force: true })
}

export function isClosing(folder: string): boolean {
  return isThere(join(folder, closingMark))
}

/** Whether anything holds the lock. Windows has a file that cannot be made a second time, which is there either way. */
export function isLockHeld(folder: string, platform: NodeJS.Platform): boolean {
  return platform === 'win32' || isThere(join(folder, 'SingletonLock'))
}

/** A symbolic link that leads nowhere is there too. */
function isThere(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false }) !== undefined
}
