import { degrees, type Angle } from '../quantity/index.ts'
import type { Procedure } from '../engine/index.ts'
import { counts, pullKey, type PlannedPull } from './plan.ts'
import type { Pull, Run } from './run.ts'
import { isShortTurn, turnedIn } from './short-turn.ts'
import { windowOf, type AcceptanceWindow } from './window.ts'

/**
 * How far a fastener has been turned in a pass, in degrees, where what was turned last came short: the pass stays open, and
 * what is left is turned from there. Null where nothing was turned, or enough.
 */
export function shortTurn(
  run: Run,
  planned: PlannedPull,
): { readonly pull: Pull; readonly turned: Angle } | null {
  const key = pullKey(planned)
  const pull = run.pulls.findLast((each) => counts(each) && pullKey(each) === key)
  if (pull === undefined || !isShortTurn(run, pull)) return null
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
  const before = run === undefined || window?.kind !== 'angle' ? null : shortTurn(run, planned)
  if (before === null || window?.kind !== 'angle') return window
  const left = (angle: Angle) => degrees(Math.max(0, angle - before.turned))
  return { ...window, target: left(window.target), least: left(window.least), most: left(window.most) }
}
