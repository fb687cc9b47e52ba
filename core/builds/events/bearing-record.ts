import type { BearingEvent, NotedPin, NotedTrayLine } from './bearing-events.ts'

/** Readings of one part as they were noted. */
export type NotedReadings = Pick<
  Extract<BearingEvent, { type: 'readings-noted' }>,
  'cells' | 'partTemperature' | 'gaugeTemperature' | 'uncertainty' | 'sure'
>

export interface NotedTray {
  readonly halves: 'alike' | 'differ'
  readonly lines: readonly NotedTrayLine[]
}

export type NotedThread = Pick<
  Extract<BearingEvent, { type: 'thread-read' }>,
  'width' | 'readWith' | 'cardStep'
>

/** What is pinned at a bearing, and why. */
export interface NotedPins {
  readonly upper: NotedPin | null
  readonly lower: NotedPin | null
  readonly reason: string
}

export interface BasisDecision {
  readonly by: 'marks' | 'readings'
  readonly reason: string
}

/** What was measured of a fit's bearings and decided about them; records are by position. */
export interface BearingRecord {
  readonly housing: Readonly<Record<string, NotedReadings>>
  readonly journal: Readonly<Record<string, NotedReadings>>
  /** The name of the spec's undersize; a journal that is not named is of standard size. */
  readonly undersizes: Readonly<Record<string, string>>
  /** Why a journal is taken for the size it is declared, where a person had to decide between that and its reading. */
  readonly sizeReasons: Readonly<Record<string, string>>
  readonly basis: Readonly<Record<string, BasisDecision>>
  readonly pins: Readonly<Record<string, NotedPins>>
  readonly threads: Readonly<Record<string, NotedThread>>
  /** Null where no shells were counted. */
  readonly tray: NotedTray | null
}

export const untouched: BearingRecord = {
  housing: {},
  journal: {},
  undersizes: {},
  sizeReasons: {},
  basis: {},
  pins: {},
  threads: {},
  tray: null,
}

/** The record after one more entry. */
export function evolveBearings(before: BearingRecord, event: BearingEvent): BearingRecord {
  switch (event.type) {
    case 'readings-noted': {
      const { position, part, cells, partTemperature, gaugeTemperature, uncertainty, sure } = event
      const noted = { cells, partTemperature, gaugeTemperature, uncertainty, ...(sure === true && { sure }) }
      // Who kept to the mark, or to the size declared, did so against the old readings.
      const basis = before.basis[position]?.by === 'marks' ? without(before.basis, position) : before.basis
      const sizeReasons = part === 'journal' ? without(before.sizeReasons, position) : before.sizeReasons
      return { ...before, [part]: { ...before[part], [position]: noted }, basis, sizeReasons }
    }
    case 'readings-withdrawn': {
      const { part, position } = event
      return {
        ...before,
        [part]: without(before[part], position),
        basis: without(before.basis, position),
        sizeReasons: part === 'journal' ? without(before.sizeReasons, position) : before.sizeReasons,
      }
    }
    case 'undersize-declared': {
      const { positions, undersize, reason } = event
      return {
        ...before,
        undersizes: withEach(before.undersizes, positions, undersize),
        sizeReasons: withEach(before.sizeReasons, positions, reason ?? null),
      }
    }
    case 'basis-decided': {
      const { position, by, reason } = event
      return { ...before, basis: { ...before.basis, [position]: { by, reason } } }
    }
    case 'shells-pinned': {
      const { position, upper, lower, reason } = event
      return { ...before, pins: { ...before.pins, [position]: { upper, lower, reason } } }
    }
    case 'shells-released':
      return { ...before, pins: without(before.pins, event.position) }
    case 'tray-noted': {
      const { halves, lines } = event
      return { ...before, tray: lines.length === 0 ? null : { halves, lines } }
    }
    case 'thread-read': {
      const { position, width, readWith, cardStep } = event
      const thread = { width, ...(readWith !== undefined && { readWith }), cardStep }
      return { ...before, threads: { ...before.threads, [position]: thread } }
    }
    default:
      return event satisfies never
  }
}

/** The record with the value at each of these keys; without them where it is null. */
function withEach<Value>(
  record: Readonly<Record<string, Value>>,
  keys: readonly string[],
  value: Value | null,
): Readonly<Record<string, Value>> {
  const others = keys.reduce(without, record)
  return value === null ? others : { ...others, ...Object.fromEntries(keys.map((key) => [key, value])) }
}

function without<Value>(
  record: Readonly<Record<string, Value>>,
  key: string,
): Readonly<Record<string, Value>> {
  return Object.fromEntries(Object.entries(record).filter(([each]) => each !== key))
}
