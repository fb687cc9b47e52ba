import type { Angle, Torque, TorqueUnit } from '../quantity/index.ts'
import { degrees, newtonMetres, roundHalfAway, torqueIn, torqueOf, torqueUnits } from '../quantity/index.ts'
import type { Pass } from '../spec/index.ts'
import type { Reading } from './events.ts'

/** Target and limits of one pull, the limits included. */
export type Window =
  (Limits<Torque> & { readonly kind: 'torque' }) | (Limits<Angle> & { readonly kind: 'angle' })

interface Limits<Value> {
  readonly target: Value
  readonly least: Value
  readonly most: Value
  /** Whether both limits are the spec's, or one was filled in by `windowOf`. People are told which. */
  readonly tolerance: 'spec' | 'usual'
}

/**
 * Share of the target by which a usual wrench may be off: ISO 6789-1, type II class A, above 10 N·m full
 * scale.
 */
const usualTorqueShare = 0.04

/**
 * ±5° is what a manual prints for 120° (TM 5-3825-226-24); for other angles it is common practice, no source.
 */
const usualDegrees = 5

/**
 * What a pull must reach; null where there is nothing to read: by hand, loosening, actions. A limit that the
 * spec leaves out is ±4 % of the target for a torque, ±5° (not below 0°) for an angle.
 */
export function windowOf(pass: Pass, fastener: string | null): Window | null {
  switch (pass.kind) {
    case 'torque':
    case 'recheck': {
      const own =
        pass.others.find(({ fasteners }) => fastener !== null && fasteners.includes(fastener)) ?? pass
      return {
        kind: 'torque',
        target: own.target,
        least: own.least ?? newtonMetres(own.target * (1 - usualTorqueShare)),
        most: own.most ?? newtonMetres(own.target * (1 + usualTorqueShare)),
        tolerance: toleranceOf(own),
      }
    }
    case 'angle':
      return {
        kind: 'angle',
        target: pass.target,
        least: pass.least ?? degrees(Math.max(0, pass.target - usualDegrees)),
        most: pass.most ?? degrees(pass.target + usualDegrees),
        tolerance: toleranceOf(pass),
      }
    case 'seat':
    case 'loosen':
    case 'action':
      return null
    default:
      return pass satisfies never
  }
}

function toleranceOf(given: { readonly least?: unknown; readonly most?: unknown }): 'spec' | 'usual' {
  return given.least === undefined || given.most === undefined ? 'usual' : 'spec'
}

/**
 * A reading against its window. `value` is in N·m or °, as the window is. A billionth is left to binary
 * rounding.
 */
export function verdictOf(window: Window, value: number): 'within' | 'under' | 'over' {
  const slack = window.target * 1e-9
  if (value < window.least - slack) return 'under'
  return value > window.most + slack ? 'over' : 'within'
}

/**
 * The unit in which the reading would have been within, where it is not within in its own: a value set in
 * lbf·in on a scale of lbf·ft, say. Null when no other unit explains it.
 */
export function suspectedUnit(window: Window, reading: Reading): TorqueUnit | null {
  const { unit, value } = reading
  if (window.kind !== 'torque' || unit === '°') return null
  if (verdictOf(window, torqueOf(value, unit)) === 'within') return null
  return torqueUnits.find((each) => verdictOf(window, torqueOf(value, each)) === 'within') ?? null
}

/** A window in numbers for people, without their unit. */
export interface ShownWindow {
  readonly target: string
  readonly least: string
  readonly most: string
}

const decimals: Readonly<Record<TorqueUnit | '°', number>> = {
  'N·m': 1,
  'lbf·ft': 1,
  'lbf·in': 0,
  'kgf·m': 2,
  '°': 1,
}

/**
 * The window in the unit of the scale in hand. Limits are rounded inwards, so that whatever reads within what
 * is shown is within: 27 lbf·ft is 36.607 N·m and shows as 36.7. Only a window too narrow for the unit's
 * decimals is rounded to the nearest.
 */
export function showWindow(window: Window, unit: TorqueUnit): ShownWindow {
  const places = decimals[window.kind === 'angle' ? '°' : unit]
  const rounded = (value: Torque | Angle, round: (n: number) => number) => {
    const onScale = window.kind === 'angle' ? value : torqueIn(value as Torque, unit)
    return roundHalfAway(round(roundHalfAway(onScale * 10 ** places, 6)) / 10 ** places, places)
  }
  const least = rounded(window.least, Math.ceil)
  const most = rounded(window.most, Math.floor)
  const nothingLeft = least > most
  return {
    target: String(rounded(window.target, roundHalfAway)),
    least: String(nothingLeft ? rounded(window.least, roundHalfAway) : least),
    most: String(nothingLeft ? rounded(window.most, roundHalfAway) : most),
  }
}
