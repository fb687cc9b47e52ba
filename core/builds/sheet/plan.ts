import type { EngineSpec } from '../../engine/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import type { PlanRecord } from '../events/plan-record.ts'
import { replay } from '../events/evolve.ts'
import { specAt, type SpecUntil } from './in-their-time.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { doneSince } from './done-since.ts'
import { stepPlace, type SheetStepPlace } from './photos.ts'

/** A step and the entry by which its work was done in the round before; null where it was skipped, or only begun. */
export interface SheetRound {
  readonly step: SheetStepPlace
  readonly done: Stamp | null
  readonly skipped: boolean
}

/** That a finished step was done again. */
export interface SheetRedone extends Stamp, SheetRound {
  readonly reason: string
  /** Whether a person said that what had to be was undone at the bench. */
  readonly takenApart: boolean
  /** The others that were open again with it, the last on top first. */
  readonly opened: readonly SheetRound[]
}

/** That the build went on without a step. */
export interface SheetSkipped extends Stamp {
  readonly step: SheetStepPlace
  readonly reason: string
  /** When and why it was to be done after all; null while it is skipped. */
  readonly takenBack: (Stamp & { readonly reason: string }) | null
}

/** Every time that a step was done again, in order. */
export function redoneOn(
  specs: readonly SpecUntil[],
  entries: readonly RecordedEvent[],
): readonly SheetRedone[] {
  const rows: SheetRedone[] = []
  let before: Before = { done: new Map(), skipped: {} }
  for (const [at, entry] of entries.entries()) {
    const { event } = entry
    const isFirst =
      (event.type === 'step-reopened' || event.type === 'marks-noted') && event.opens !== undefined
    const spec = specAt(specs, entry.seq)
    if (isFirst) before = roundBefore(specs, entries.slice(0, at))
    if (event.type === 'step-reopened' && event.byRevision === true) continue
    if (event.type !== 'step-reopened') {
      const last = rows.findLastIndex(({ step }) => isFirst && 'step' in event && step.id === event.step)
      if (last >= 0 && event.type === 'marks-noted' && event.takenApart === true)
        rows[last] = { ...rows[last]!, takenApart: true }
      continue
    }
    const round = roundOf(spec, before, event.step)
    if (event.opens !== undefined) {
      const { reason, takenApart } = event
      rows.push({ ...stampOf(entry), ...round, reason, takenApart: takenApart === true, opened: [] })
      continue
    }
    const last = rows.findLastIndex(({ step }) => step.id === event.redone)
    const row = rows[last]
    if (row !== undefined) rows[last] = { ...row, opened: [...row.opened, round] }
  }
  return rows
}

/** How a step stood before it was opened again. */
export function roundOf(spec: EngineSpec, before: Before, step: string): SheetRound {
  return {
    step: stepPlace(spec, step),
    done: before.done.get(step) ?? null,
    skipped: before.skipped[step] !== undefined,
  }
}

export interface Before extends Pick<PlanRecord, 'skipped'> {
  readonly done: ReadonlyMap<string, Stamp>
}

/** How the steps stand after these entries. */
export function roundBefore(specs: readonly SpecUntil[], entries: readonly RecordedEvent[]): Before {
  const state = replay(entries)
  return { done: doneSince(specs, state, entries), skipped: state.plan.skipped }
}

/** Every time that a step was skipped, in order. */
export function skippedOn(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly SheetSkipped[] {
  const rows: SheetSkipped[] = []
  for (const entry of entries) {
    const { event } = entry
    if (event.type === 'step-skipped')
      rows.push({
        ...stampOf(entry),
        step: stepPlace(spec, event.step),
        reason: event.reason,
        takenBack: null,
      })
    if (event.type !== 'skip-taken-back' && event.type !== 'step-reopened') continue
    const last = rows.findLastIndex(({ step, takenBack }) => step.id === event.step && takenBack === null)
    if (last >= 0) rows[last] = { ...rows[last]!, takenBack: { ...stampOf(entry), reason: event.reason } }
  }
  return rows
}
