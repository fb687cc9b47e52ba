import { done, refused, type Outcome } from '../../problem/index.ts'
import type { Pass } from '../../engine/index.ts'
import type { RunCommand } from './commands.ts'
import type { RunEvent } from './events.ts'
import { readReason } from './reason.ts'

type WaitedPull = Pick<Extract<RunEvent, { type: 'fastener-pulled' }>, 'waited_s' | 'waitShortened'>

/** How long a pass waits, in seconds; null where it does not. */
export function waitOf(pass: Pass): number | null {
  return pass.kind === 'action' && pass.waitMinutes !== undefined ? 60 * pass.waitMinutes : null
}

/**
 * What is recorded of a wait. A clock is no part of the core: the command says how long was waited. One that is shorter than
 * the procedure says has a reason.
 *
 * Refuses `wait-not-over`, and `reason-missing` where the reason is empty.
 */
export function decideWait(
  pass: Pass,
  { waited }: Extract<RunCommand, { type: 'pull' }>,
): Outcome<WaitedPull> {
  const wait = waitOf(pass)
  if (wait === null) return done({})
  const seconds = waited?.seconds ?? 0
  if (seconds >= wait) return done({ waited_s: seconds })
  if (waited === undefined || waited.shortened === null)
    return refused('wait-not-over', { minutes: wait / 60, seconds: Math.ceil(wait - seconds) })
  const reason = readReason(waited.shortened, { what: 'wait-shortened' })
  return reason.ok ? done({ waited_s: seconds, waitShortened: reason.value }) : reason
}
