import {
  checkByThread,
  measuredClearance,
  undersizeCalled,
  type MeasuredSize,
  type ThreadCheck,
} from '../../bearing/index.ts'
import type { ReadWith } from '../../instrument/index.ts'
import { nanometres, type Length } from '../../quantity/index.ts'
import { bearingAt, type BearingCase } from '../shells/bearing-at.ts'
import type { BasisDecision, NotedPins, NotedReadings, NotedTray } from '../events/bearing-record.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { bearingsIn, type BuildState } from '../events/state.ts'
import type { Fit } from '../../engine/index.ts'
import { clearanceAt, shellsChosen, wallsOf } from '../shells/clearance-at.ts'

/** What was measured of one bearing and decided about it, beside its marks and shells. */
export interface SheetMeasured {
  /** As it is called; null for the standard size. */
  readonly undersize: string | null
  /** Why the journal counts as that size, where a person decided between what was declared and what it measured. */
  readonly sizeReason: { readonly reason: string; readonly decided: Stamp | null } | null
  readonly housing: SheetReadings | null
  readonly journal: SheetReadings | null
  readonly basis: BearingCase['basis']
  readonly decision: (BasisDecision & { readonly decided: Stamp | null }) | null
  readonly pins: NotedPins | null
  readonly thread: (ThreadReading & { readonly typed: string; readonly readWith: ReadWith | null }) | null
}

/** Readings of one part: as typed, and what they come to at 20 °C. */
export interface SheetReadings extends NotedReadings {
  readonly noted: Stamp | null
  readonly measured: MeasuredSize
}

/** A plastic thread's reading beside what was computed; `check` is null while nothing can be computed. */
export interface ThreadReading {
  readonly width: Length
  readonly cardStep: Length
  readonly check: ThreadCheck | null
}

/** The shells that were in the tray when they were last counted. */
export interface SheetTray extends NotedTray {
  readonly noted: Stamp | null
}

export function measuredOn(
  state: BuildState,
  fit: Fit,
  position: string,
  entries: readonly RecordedEvent[],
): SheetMeasured {
  const bearing = bearingAt(state, fit, position)
  const record = bearingsIn(state, fit.id)
  const { decision, measured } = bearing
  const readings = (part: 'housing' | 'journal', measured: MeasuredSize | null): SheetReadings | null => {
    const noted = record[part][position]
    if (noted === undefined || measured === null) return null
    return { ...noted, noted: lastStamp(entries, fit, 'readings-noted', position, part), measured }
  }
  const thread = record.threads[position]
  const sizeReason = record.sizeReasons[position]
  return {
    undersize: undersizeCalled(fit, bearing.undersize),
    sizeReason:
      sizeReason === undefined
        ? null
        : { reason: sizeReason, decided: lastStamp(entries, fit, 'undersize-declared', position) },
    housing: readings('housing', measured.bore),
    journal: readings('journal', measured.journal),
    basis: bearing.basis,
    decision:
      decision === null ? null : { ...decision, decided: lastStamp(entries, fit, 'basis-decided', position) },
    pins: bearing.pins,
    thread:
      thread === undefined
        ? null
        : {
            typed: `${thread.width.typed} ${thread.width.unit}`,
            readWith: thread.readWith ?? null,
            ...threadAt(state, fit, position)!,
          },
  }
}

export function trayOn(state: BuildState, fit: Fit, entries: readonly RecordedEvent[]): SheetTray | null {
  const { tray } = bearingsIn(state, fit.id)
  return tray === null ? null : { ...tray, noted: lastStamp(entries, fit, 'tray-noted') }
}

/**
 * The plastic thread's reading of a bearing held against what its chosen shells leave: from readings, where both parts
 * were measured, between the least and the greatest clearance; otherwise the worst case of the bands. Null where no
 * thread was read.
 */
export function threadAt(state: BuildState, fit: Fit, position: string): ThreadReading | null {
  const noted = bearingsIn(state, fit.id).threads[position]
  if (noted === undefined) return null
  const width = nanometres(noted.width.length_nm)
  const cardStep = nanometres(noted.cardStep.length_nm)
  const judged = clearanceAt(state, fit, position)
  if (judged === null) return { width, cardStep, check: null }
  const bearing = bearingAt(state, fit, position)
  const { bore, journal } = bearing.measured
  const chosen = shellsChosen(state, fit, position)
  const walls = chosen && wallsOf(state, bearing, chosen)
  const isMeasured = bearing.basis === 'readings' && bore !== null && journal !== null
  if (!isMeasured || walls?.ok !== true)
    return { width, cardStep, check: checkByThread(width, cardStep, judged.clearance) }
  const { counts, greatest } = measuredClearance({ bore, journal }, walls.value.upper, walls.value.lower)
  const computed = { least: counts.least, most: greatest.most }
  return { width, cardStep, check: checkByThread(width, cardStep, computed) }
}

function lastStamp(
  entries: readonly RecordedEvent[],
  fit: Fit,
  type: 'readings-noted' | 'basis-decided' | 'tray-noted' | 'undersize-declared',
  position?: string,
  part?: 'housing' | 'journal',
): Stamp | null {
  const entry = entries.findLast(
    ({ event }) =>
      event.type === type &&
      event.fit === fit.id &&
      (position === undefined || isAbout(event, position)) &&
      (part === undefined || ('part' in event && event.part === part)),
  )
  return entry === undefined ? null : stampOf(entry)
}

function isAbout(event: RecordedEvent['event'], position: string): boolean {
  if ('positions' in event) return event.positions.includes(position)
  return 'position' in event && event.position === position
}
