import type { Angle, Length, LengthUnit, Torque, TorqueUnit } from '../../quantity/index.ts'
import {
  degrees,
  lengthAmount,
  nanometres,
  newtonMetres,
  roundHalfAway,
  shortAmount,
  torqueIn,
} from '../../quantity/index.ts'
import type { Pass, TurningTorque } from '../../engine/index.ts'
import type { Amount, Span } from '../../words/index.ts'
import { verdictOfTurning } from './turning.ts'

/** Target and limits of one pull by a wrench, the limits included. */
export type PullWindow = TorqueWindow | AngleWindow

interface TorqueWindow extends Limits<Torque> {
  readonly kind: 'torque'
}

interface AngleWindow extends Limits<Angle> {
  readonly kind: 'angle'
}

/** What is measured, its limits included: the gap of the face, what an action asks for, how much longer a fastener is. */
export interface LengthWindow {
  readonly kind: 'length'
  readonly of: 'gap' | 'action' | 'stretch'
  readonly least: Length
  readonly most: Length
  /** Where a fastener is tightened until it is so much longer: what its torque must be then. */
  readonly torque?: PullWindow & { readonly kind: 'torque' }
}

/** What it may take to turn the crank. */
export interface TurningWindow extends TurningTorque {
  readonly kind: 'turning'
}

/** What one pull must show. The length of a fastener that has not been pulled may be any. */
export type AcceptanceWindow = PullWindow | LengthWindow | TurningWindow | { readonly kind: 'free-length' }

interface Limits<Value> {
  readonly target: Value
  readonly least: Value
  readonly most: Value
  /** Whether both limits are the spec's, or one was filled in by `windowOf`. People are shown which. */
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
 * What a pull must reach; null where there is nothing to read: by hand, loosening, most actions. A limit that the
 * spec leaves out is ±4 % of the target for a torque, ±5° (not below 0°) for an angle.
 */
export function windowOf(pass: Pass, fastener: string | null): AcceptanceWindow | null {
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
    case 'angle': {
      const own =
        pass.others?.find(({ fasteners }) => fastener !== null && fasteners.includes(fastener)) ?? pass
      return {
        kind: 'angle',
        target: own.target,
        least: own.least ?? degrees(Math.max(0, own.target - usualDegrees)),
        most: own.most ?? degrees(own.target + usualDegrees),
        tolerance: toleranceOf(own),
      }
    }
    case 'seat':
      return fastener === null && pass.gap !== undefined
        ? { kind: 'length', of: 'gap', least: nanometres(0), most: pass.gap.most }
        : null
    case 'length':
      return { kind: 'free-length' }
    case 'stretch':
      return { kind: 'length', of: 'stretch', least: pass.least, most: pass.most }
    case 'tighten-to-stretch': {
      const { least, most } = pass.torque
      const target = newtonMetres((least + most) / 2)
      return {
        kind: 'length',
        of: 'stretch',
        least: pass.least,
        most: pass.most,
        torque: { kind: 'torque', target, least, most, tolerance: 'spec' },
      }
    }
    case 'action':
      if (pass.turning !== undefined) return { kind: 'turning', ...pass.turning }
      return pass.reading === undefined ? null : { kind: 'length', of: 'action', ...pass.reading }
    case 'loosen':
      return null
    default:
      return pass satisfies never
  }
}

function toleranceOf(bounds: { readonly least?: unknown; readonly most?: unknown }): 'spec' | 'usual' {
  return bounds.least === undefined || bounds.most === undefined ? 'usual' : 'spec'
}

/**
 * A reading against its window. `value` is in N·m, ° or nm, as the window is. A billionth is left to binary
 * rounding; lengths are whole nanometres and need none.
 */
export function verdictOf(window: AcceptanceWindow, value: number): 'within' | 'under' | 'over' {
  if (window.kind === 'free-length') return 'within'
  if (window.kind === 'turning') return verdictOfTurning(window, newtonMetres(value), null)
  const slack = window.kind === 'length' ? 0 : window.target * 1e-9
  if (value < window.least - slack) return 'under'
  return value > window.most + slack ? 'over' : 'within'
}

/** A window in numbers for people, without their unit. */
export interface ShownWindow {
  readonly target: number
  readonly least: number
  readonly most: number
}

const decimals: Readonly<Record<TorqueUnit | '°', number>> = {
  'N·m': 1,
  'lbf·ft': 1,
  'lbf·in': 0,
  'kgf·m': 2,
  'kgf·cm': 0,
  'dN·m': 0,
  'ozf·in': 0,
  '°': 1,
}

/**
 * The window in the unit of the scale in use. Limits are rounded inwards, so that whatever reads within what
 * is shown is within: 27 lbf·ft is 36.607 N·m and shows as 36.7. Only a window too narrow for the unit's
 * decimals is rounded to the nearest.
 */
export function showWindow(window: PullWindow, unit: TorqueUnit): ShownWindow {
  const places = decimals[window.kind === 'angle' ? '°' : unit]
  const rounded = (value: Torque | Angle, round: (n: number) => number) => {
    const onScale = window.kind === 'angle' ? value : torqueIn(value as Torque, unit)
    return roundHalfAway(round(roundHalfAway(onScale * 10 ** places, 6)) / 10 ** places, places)
  }
  const least = rounded(window.least, Math.ceil)
  const most = rounded(window.most, Math.floor)
  const nothingLeft = least > most
  return {
    target: rounded(window.target, roundHalfAway),
    least: nothingLeft ? rounded(window.least, roundHalfAway) : least,
    most: nothingLeft ? rounded(window.most, roundHalfAway) : most,
  }
}

/** Whether what is measured is the length of the fastener itself, before it is pulled or after. */
export function isFastenerLength(window: AcceptanceWindow): boolean {
  return window.kind === 'free-length' || (window.kind === 'length' && window.of === 'stretch')
}

/** What a length must be: `0.10 mm to 0.25 mm`, `at most 0.05 mm`. */
export function lengthSpan({ least, most }: LengthWindow, unit: LengthUnit): Span {
  return { from: least === 0 ? null : lengthAmount(least, unit), upTo: lengthAmount(most, unit) }
}

/** A number of `ShownWindow`, which is rounded already. */
export function shownAmount(value: number, unit = ''): Amount {
  return shortAmount(value, unit, 6)
}

/** The limits of a window as numbers without their unit, rounded inwards as `showWindow` does. */
export function limitsSpan(window: PullWindow, unit: TorqueUnit): Span {
  const { least, most } = showWindow(window, unit)
  return { from: shownAmount(least), upTo: shownAmount(most) }
}
