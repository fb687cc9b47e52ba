import type { PassKind } from '../../engine/index.ts'
import { lengthOf, torqueOf } from '../../quantity/index.ts'
import {
  isLengthUnit,
  isTorqueUnit,
  torqueAtFastener,
  type AcceptanceWindow,
  type HeldWrench,
} from '../../tightening/index.ts'
import type { SheetPull, SheetRun } from './runs.ts'

interface Spread {
  readonly count: number
  readonly least: number
  readonly most: number
}

/** What one pass came to: a row for all its fasteners of one target. Only pulls that still count are in it. */
export interface SheetPass {
  /** Counts from 1. */
  readonly pass: number
  readonly kind: PassKind
  /** Null where there is nothing to read. */
  readonly window: AcceptanceWindow | null
  /** How many fasteners, or things to do between passes. */
  readonly count: number
  /** What was read at the fasteners, in N·m, ° or nm as the window is; null where nothing was. */
  readonly read: Spread | null
  /** The torques at which fasteners were so much longer, in N·m; null where none was read. */
  readonly torque: Spread | null
  /** How long the procedure was waited for, in seconds, and why not longer; null where it does not wait. */
  readonly waited: SheetPull['waited']
  /** How many were confirmed but not read, where there is something to read. */
  readonly unread: number
  /** The numbers of those that are not within their limits. */
  readonly outside: readonly string[]
  /** Each once, as it was recorded with the pulls. */
  readonly wrenches: readonly HeldWrench[]
}

/** In the order of the passes; a pass with two targets has a row for each, the first pulled first. */
export function passResults(run: Pick<SheetRun, 'pulls'>): readonly SheetPass[] {
  const rows = new Map<string, SheetPull[]>()
  for (const pull of run.pulls) {
    if (pull.takenBack !== null || pull.setAside !== null) continue
    const key = `${pull.pass} ${JSON.stringify(pull.window)}`
    rows.set(key, [...(rows.get(key) ?? []), pull])
  }
  return [...rows.values()].map(resultOf).toSorted((one, other) => one.pass - other.pass)
}

function resultOf(pulls: readonly SheetPull[]): SheetPass {
  const [{ pass, kind, window }] = pulls as readonly [SheetPull, ...SheetPull[]]
  // A turn that came short and was turned on is one fastener, and its last reading has all of the turn.
  const last = new Map(pulls.map((pull) => [pull.fastener ?? pull.number, pull]))
  const live = [...last.values()]
  const wrenches = new Map(live.flatMap(({ held }) => (held === null ? [] : [[JSON.stringify(held), held]])))
  return {
    ...{ pass, kind, window, count: live.length },
    read: spreadOf(live.flatMap((pull) => valueOf(pull) ?? [])),
    torque: spreadOf(
      live.flatMap(({ torque }) =>
        torque !== null && isTorqueUnit(torque.unit) ? [torqueOf(torqueAtFastener(torque), torque.unit)] : [],
      ),
    ),
    waited: live.find(({ waited }) => waited !== null)?.waited ?? null,
    unread: window === null ? 0 : live.filter(({ reading }) => reading === null).length,
    outside: live.flatMap(({ verdict, fastener }) =>
      verdict === 'within' || verdict === 'unread' ? [] : [fastener ?? '–'],
    ),
    wrenches: [...wrenches.values()],
  }
}

function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null
  return { count: values.length, least: Math.min(...values), most: Math.max(...values) }
}

/** What the fastener had, in the unit of its window; null where it was not read. */
function valueOf({ reading, window, from, stretch }: SheetPull): number | null {
  if (reading === null || window === null) return null
  const { unit, value } = reading
  if (isTorqueUnit(unit)) return torqueOf(torqueAtFastener(reading), unit)
  if (isLengthUnit(unit))
    return window.kind === 'length' && window.of === 'stretch' ? stretch : lengthOf(value, unit)
  return from + value
}
