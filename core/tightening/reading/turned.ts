import { degrees, type Angle } from '../../quantity/index.ts'
import type { Procedure } from '../../engine/index.ts'
import { counts, pullKey, type PlannedPull } from '../run/plan.ts'
import type { Pull, Run } from '../run/run.ts'
import { isShort, turnedIn } from './short-turn.ts'
import { windowOf, type AcceptanceWindow } from './window.ts'

/**
 * The pull of a fastener in a pass that came short and is to be continued, and how far it has been turned, of a turn: the pass
 * stays open, and what is left is done from there. Null where nothing was pulled, or enough.
 */
export function shortPull(
  run: Run,
  planned: PlannedPull,
): { readonly pull: Pull; readonly turned: Angle } | null {
  const key = pullKey(planned)
  const pull = run.pulls.findLast((each) => counts(each) && pullKey(each) === key)
  if (pull === undefined || !isShort(run, pull)) return null
  return { pull, turned: turnedIn(pull) }
}

/**
 * `windowOf` for the pull as it is made now: of a turn that came short, what is left of it. Nothing may be turned twice, so
 * its most is what the whole pass allows less what was turned already.
 */
export function windowNow(
  procedure: Procedure,
  run: Run | undefined,
  planned: PlannedPull,
): AcceptanceWindow | null {
  const pass = procedure.passes[planned.pass]
  const window = pass === undefined ? null : windowOf(pass, planned.fastener)
  const before = run === undefined || window?.kind !== 'angle' ? null : shortPull(run, planned)
  if (before === null || window?.kind !== 'angle') return window
  const left = (angle: Angle) => degrees(Math.max(0, angle - before.turned))
  return { ...window, target: left(window.target), least: left(window.least), most: left(window.most) }
}
