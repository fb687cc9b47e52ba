import { torqueOf, type Length, type Torque } from '../../quantity/index.ts'
import type { Reading } from '../run/events.ts'
import { isTorqueUnit, torqueAtFastener } from './reading.ts'
import { verdictOf, type LengthWindow } from './window.ts'

/**
 * What came of tightening a fastener until it is so much longer:
 * - `short`: not long enough, with torque left: it is tightened on.
 * - `too-long`: longer than it may be. Nothing undoes that.
 * - `at-most-torque`: at its largest torque or past it, and not long enough, or the torque is past its upper limit.
 * - `below-least-torque`: long enough at less torque than it must have: it yields, or is not what the spec means.
 */
export type StretchOutcome = 'within' | 'short' | 'too-long' | 'at-most-torque' | 'below-least-torque'

/** `torque` is what the fastener had, in N·m, of a window that has a torque. */
export function stretchOutcome(window: LengthWindow, stretch: Length, torque: Torque): StretchOutcome {
  const long = verdictOf(window, stretch)
  const tight = window.torque === undefined ? 'within' : verdictOf(window.torque, torque)
  if (long === 'over') return 'too-long'
  if (tight === 'over') return 'at-most-torque'
  if (long === 'under')
    return window.torque !== undefined && torque >= window.torque.most ? 'at-most-torque' : 'short'
  return tight === 'under' ? 'below-least-torque' : 'within'
}

/** What the run says of it: only what is short can be tightened further, all else has gone too far. */
export function verdictOfStretch(outcome: StretchOutcome): 'within' | 'under' | 'over' {
  if (outcome === 'within') return 'within'
  return outcome === 'short' ? 'under' : 'over'
}

/** The torque that a fastener had of a reading. Throws on one that is no torque, which no record has there. */
export function torqueRead(reading: Reading): Torque {
  if (!isTorqueUnit(reading.unit)) throw new Error(`a torque in ${reading.unit}`)
  return torqueOf(torqueAtFastener(reading), reading.unit)
}
