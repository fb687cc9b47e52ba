import type { EngineSpec, FastenerGroup, Pass, Procedure } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { newtonMetres, readTorque, torqueAmount, torqueOf, type Torque } from '../../quantity/index.ts'
import { groupOf } from '../order/fastener-group.ts'
import type { Reading } from '../run/events.ts'
import { isTorqueUnit, type TypedReading } from './reading.ts'
import type { Run } from '../run/run.ts'
import { windowOf, type AcceptanceWindow } from './window.ts'

/**
 * A fastener that does not run free: a locking nut, a thread insert, a coated thread (ISO 2320). `counts` is what the manual says
 * of its torque: it has the prevailing torque in it, or that goes on top, or the manual does not say. Nothing is added unless it
 * goes on top, and then what was measured, since a used nut turns more easily than a new one and would be tightened too far.
 */
export interface PrevailingTorque {
  /** The most that it may take to run down. */
  readonly most: Torque
  readonly counts: 'included' | 'on-top' | 'not-said'
}

export function prevailingOfGroup({
  prevailing,
  torqueIncludesPrevailing,
}: FastenerGroup): PrevailingTorque | null {
  if (prevailing === undefined) return null
  const counts =
    torqueIncludesPrevailing === undefined ? 'not-said' : torqueIncludesPrevailing ? 'included' : 'on-top'
  return { most: prevailing, counts }
}

/**
 * Of the fastener of a pull; null for one that runs free, and where no torque wrench is used. What goes on top is read while the
 * fastener runs down, which it does where it is seated: there it has to be said as well.
 */
export function prevailingIn(spec: EngineSpec, pass: Pass, fastener: string | null): PrevailingTorque | null {
  const group = groupOf(spec, fastener)
  const prevailing = group === undefined ? null : prevailingOfGroup(group)
  if (prevailing === null) return null
  const window = windowOf(pass, fastener)
  if (window !== null && torqueWindowIn(window) !== null) return prevailing
  return pass.kind === 'seat' && prevailing.counts === 'on-top' ? prevailing : null
}

/** The torque that is pulled to: of a pull by torque, or of a stretch that has one. */
export function torqueWindowIn(
  window: AcceptanceWindow,
): Extract<AcceptanceWindow, { kind: 'torque' }> | null {
  if (window.kind === 'torque') return window
  return window.kind === 'length' ? (window.torque ?? null) : null
}

/**
 * What a fastener took to run down, as it was last read since it was loose: it touches now, and cannot be read again, not even where
 * a pull was taken back to be made again. One that was loosened turns more easily than before. Null where it has to be read.
 */
export function runningBefore(
  procedure: Procedure,
  run: Run | undefined,
  fastener: string | null,
): Reading | null {
  const own = (run?.pulls ?? []).filter((pull) => pull.fastener === fastener)
  const loosened = own.findLastIndex(
    ({ pass, takenBack }) => procedure.passes[pass]?.kind === 'loosen' && takenBack === null,
  )
  return own.slice(loosened + 1).findLast(({ running }) => running !== null)?.running ?? null
}

/**
 * Reads what a fastener takes to run down, off a wrench without an adapter, before it touches.
 *
 * Refuses what `parseTorque` refuses, `reading-of-other-kind` for what is no torque, and `running-torque-high` above the most of
 * the spec: a damaged thread, or a nut that touched already, and what is set on top of that would tighten too far.
 */
export function readRunning(
  { most }: PrevailingTorque,
  { typed, unit }: TypedReading,
  fastener: string | null,
): Outcome<Reading> {
  if (!isTorqueUnit(unit)) return refused('reading-of-other-kind', { wanted: 'torque', unit })
  const torque = readTorque(typed, unit)
  if (!torque.ok) return torque
  const reading = { typed, value: torque.value.amount, unit: torque.value.unit }
  if (torqueOf(reading.value, reading.unit) <= most * (1 + 1e-9)) return done(reading)
  return refused('running-torque-high', {
    fastener,
    read: torqueAmount(torqueOf(reading.value, reading.unit), reading.unit),
    most: torqueAmount(most, reading.unit),
  })
}

/** What a running torque comes to in N·m; nothing where there is none. Throws on a reading that is no torque. */
export function runningTorque(running: Reading | null): Torque {
  if (running === null) return newtonMetres(0)
  if (!isTorqueUnit(running.unit)) throw new Error(`a torque in ${running.unit}`)
  return torqueOf(running.value, running.unit)
}

/** What the fastener is pulled to at the wrench: target and limits with what it takes to run down on top. */
export function withRunning<Window extends Extract<AcceptanceWindow, { kind: 'torque' }>>(
  window: Window,
  running: Torque,
): Window {
  const more = (torque: Torque) => newtonMetres(torque + running)
  return { ...window, target: more(window.target), least: more(window.least), most: more(window.most) }
}
