import { done, refused, type Outcome } from '../problem/index.ts'
import { parseAngle, readTorque, torqueOf } from '../quantity/index.ts'
import type { Reading } from './events.ts'
import type { Window } from './window.ts'

/** A reading as it comes: what was typed or sent by a gauge, and the unit of the scale it was read off. */
export interface TypedReading {
  readonly typed: string
  readonly unit: Reading['unit']
}

/** A reading as it is recorded, and the same in N·m or °, as its window is. */
export interface Taken {
  readonly reading: Reading
  readonly value: number
}

/**
 * Reads `24`, `24,5`, `24 Nm` for a torque, `90`, `90°` for an angle. A unit that is typed goes before the
 * scale's.
 *
 * Refuses what `parseTorque` and `parseAngle` refuse, and `reading-of-other-kind` where the scale measures
 * something else.
 */
export function takeReading(window: Window, given: TypedReading): Outcome<Taken> {
  const { typed, unit } = given
  if (window.kind === 'angle') {
    if (unit !== '°') return refused('reading-of-other-kind', { wanted: 'an angle in °', unit })
    const angle = parseAngle(typed)
    return angle.ok ? done({ reading: { typed, value: angle.value, unit }, value: angle.value }) : angle
  }
  if (unit === '°') return refused('reading-of-other-kind', { wanted: 'a torque', unit })
  const torque = readTorque(typed, unit)
  if (!torque.ok) return torque
  const { amount, unit: read } = torque.value
  return done({ reading: { typed, value: amount, unit: read }, value: torqueOf(amount, read) })
}
