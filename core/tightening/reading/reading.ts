import { done, refused, type Outcome } from '../../problem/index.ts'
import {
  lengthIn,
  lengthUnits,
  newtonMetres,
  parseAngle,
  parseLength,
  readTorque,
  torqueIn,
  torqueOf,
  benchTorqueUnits,
  torqueUnits,
  type LengthUnit,
  type Torque,
  type TorqueUnit,
} from '../../quantity/index.ts'
import type { Reading } from '../run/events.ts'
import { readTurning } from './turning.ts'
import { verdictOf, type AcceptanceWindow } from './window.ts'
import { fastenerShare, type HeldWrench } from '../wrench/held.ts'

export function isTorqueUnit(unit: Reading['unit']): unit is TorqueUnit {
  return torqueUnits.some((each) => each === unit)
}

export function isLengthUnit(unit: Reading['unit']): unit is LengthUnit {
  return lengthUnits.some((each) => each === unit)
}

/** A reading as it comes: what was typed or sent by a gauge, and the unit of the scale it was read off. */
export interface TypedReading {
  readonly typed: string
  readonly unit: Reading['unit']
}

/** A reading as it is recorded, and what the fastener had of it in N·m, ° or nm, as its window is. */
export interface ParsedReading {
  readonly reading: Reading
  readonly value: number
}

/**
 * Reads `24`, `24,5`, `24 Nm` for a torque, `90`, `90°` for an angle, `0.15`, `0.006 in` for a length. A unit that is typed goes before the
 * scale's. `held`
 * is the wrench that a torque was read off: with an adapter the fastener has another torque than the scale shows. `running` is
 * what it takes to run down where that goes on top of the spec's torque: it goes off the reading before it is judged.
 *
 * Refuses what `parseTorque`, `parseAngle` and `parseLength` refuse, a negative length, `reading-of-other-kind` where the scale measures
 * something else, and what `fastenerShare` refuses.
 */
export function takeReading(
  window: AcceptanceWindow,
  typedReading: TypedReading,
  heldWrench: HeldWrench | null = null,
  running: Torque = newtonMetres(0),
): Outcome<ParsedReading> {
  const { typed, unit } = typedReading
  if (window.kind === 'angle') {
    if (unit !== '°') return refused('reading-of-other-kind', { wanted: 'angle', unit })
    const angle = parseAngle(typed)
    return angle.ok ? done({ reading: { typed, value: angle.value, unit }, value: angle.value }) : angle
  }
  if (window.kind === 'length' || window.kind === 'free-length') {
    if (!isLengthUnit(unit)) return refused('reading-of-other-kind', { wanted: 'length', unit })
    const length = parseLength(typed, unit)
    if (!length.ok) return length
    if (length.value < 0) return refused('number-negative', { typed: typed.trim() })
    return done({ reading: { typed, value: lengthIn(length.value, unit), unit }, value: length.value })
  }
  if (!isTorqueUnit(unit)) return refused('reading-of-other-kind', { wanted: 'torque', unit })
  if (window.kind === 'turning') {
    const turned = readTurning(typed, unit)
    return turned.ok ? done({ reading: turned.value.reading, value: turned.value.torque }) : turned
  }
  const torque = readTorque(typed, unit)
  if (!torque.ok) return torque
  const share = fastenerShare(heldWrench)
  if (!share.ok) return share
  const { amount, unit: read } = torque.value
  const atFastener = share.value === 1 ? {} : { atFastener: amount * share.value }
  const clamping =
    running === 0 ? {} : { clamping: Math.max(0, amount * share.value - torqueIn(running, read)) }
  const reading = { typed, value: amount, unit: read, ...atFastener, ...clamping }
  return done({ reading, value: torqueOf(torqueAtFastener(reading), read) })
}

/** What the spec's torque is compared with, in the unit of the reading: what the fastener had, without what it took to run down. */
export function torqueAtFastener({ value, atFastener, clamping }: Reading): number {
  return clamping ?? atFastener ?? value
}

/**
 * The unit in which the reading would have been within, where it is not within in its own: a value set in
 * lbf·in on a scale of lbf·ft, say. Null when no other unit explains it.
 */
export function suspectedUnit(window: AcceptanceWindow, reading: Reading): TorqueUnit | null {
  const { unit } = reading
  const value = torqueAtFastener(reading)
  if (window.kind !== 'torque' || !isTorqueUnit(unit)) return null
  if (verdictOf(window, torqueOf(value, unit)) === 'within') return null
  return benchTorqueUnits.find((each) => verdictOf(window, torqueOf(value, each)) === 'within') ?? null
}
