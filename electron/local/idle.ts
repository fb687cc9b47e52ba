/** Notices that nobody has asked for anything for a while. */
export interface IdleWatch {
  /** Somebody asked. */
  readonly noteRequest: () => void
  readonly stop: () => void
}

/**
 * Calls `ended` after `ticks` checks in a row without a sign of life. Checks are counted rather than times compared, so
 * that a machine that slept does not wake to find everybody gone.
 */
export function watchIdle(ticks: number, everyMs: number, ended: () => void): IdleWatch {
  let quiet = 0
  const timer = setInterval(() => {
    quiet += 1
    if (quiet >= ticks) ended()
  }, everyMs)
  return { noteRequest: () => void (quiet = 0), stop: () => clearInterval(timer) }
}
