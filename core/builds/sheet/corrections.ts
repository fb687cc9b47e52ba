import type { Phrase } from '../../problem/index.ts'
import { halfName, splitAt, type EngineSpec } from '../../engine/index.ts'
import { numberOf, reasonOf, type Reason } from '../../tightening/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { evolve } from '../events/evolve.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { placeIn } from '../limits/measures-in.ts'
import { pistonIn } from '../rings/asked-rings.ts'
import { emptyBuild, type BuildState } from '../events/state.ts'

/** Something that was put right. The entry that it corrects stays in the record. */
export interface SheetCorrection extends Stamp {
  readonly kind:
    | 'pull-taken-back'
    | 'pull-read-again'
    | 'fastener-loosened'
    | 'fastener-replaced'
    | 'run-restarted'
    | 'half-taken-out'
    | 'part-taken-out'
    | 'ticks-removed'
    | 'measured-part-replaced'
    | 'rings-taken-off'
    | 'bead-wiped-off'
    | 'marks-noted-again'
    | 'shells-chosen-again'
    | 'check-answered-again'
    | 'readings-noted-again'
    | 'readings-withdrawn'
    | 'step-sent-back'
  /** What it was about: a fastener's number with its procedure, a half, a step, a part. */
  readonly about: Phrase
  /** Null where none is asked for. */
  readonly reason: Reason | null
}

export function correctionsIn(
  spec: EngineSpec,
  entries: readonly RecordedEvent[],
): readonly SheetCorrection[] {
  const corrections: SheetCorrection[] = []
  const chosenBefore = new Set<string>()
  let state = emptyBuild
  for (const entry of entries) {
    const correction = correctionOf(spec, state, chosenBefore, entry)
    if (correction !== null) corrections.push({ ...stampOf(entry), ...correction })
    if (entry.event.type === 'shells-chosen') chosenBefore.add(entry.event.fit)
    state = evolve(state, entry)
  }
  return corrections
}

/**
 * `before` is the state before the entry; marks that change make a choice fall away, so that is asked of
 * `chosenBefore`.
 */
function correctionOf(
  spec: EngineSpec,
  before: BuildState,
  chosenBefore: ReadonlySet<string>,
  { event }: RecordedEvent,
): Omit<SheetCorrection, keyof Stamp> | null {
  const procedureName = (id: string) => spec.procedures.find((each) => each.id === id)?.name ?? id
  const stepName = (id: string) => spec.steps.find((step) => step.id === id)?.name ?? id
  const stepCalled = (id: string): Phrase => ({ code: 'stepCalled', facts: { step: stepName(id) } })
  switch (event.type) {
    case 'pull-read-again':
    case 'pull-taken-back': {
      const { procedure, pull, reason } = event
      const fastener = before.runs[procedure]?.pulls.find(({ number }) => number === pull)?.fastener ?? null
      const number = numberOf(spec, fastener)
      const about = { procedure: procedureName(procedure), number, pull }
      return { kind: event.type, about: { code: 'pullOf', facts: about }, reason }
    }
    case 'fastener-loosened':
    case 'fastener-replaced':
      return {
        kind: event.type,
        about: {
          code: 'fastenerOf',
          facts: {
            procedure: procedureName(event.procedure),
            number: numberOf(spec, event.fastener) ?? event.fastener,
          },
        },
        reason: event.type === 'fastener-loosened' ? reasonOf(event) : null,
      }
    case 'run-restarted':
      return {
        kind: event.type,
        about: {
          code: 'fromPassOf',
          facts: { procedure: procedureName(event.procedure), pass: event.pass + 1 },
        },
        reason: reasonOf(event),
      }
    case 'half-taken-out': {
      const { position, half, reason } = event
      const named = halfName({ split: splitAt(spec, position) }, half)
      return { kind: event.type, about: { code: 'halfAt', facts: { position, half: named } }, reason }
    }
    case 'part-taken-out':
    case 'bead-wiped-off':
      return { kind: event.type, about: stepCalled(event.step), reason: reasonOf(event) }
    case 'measured-part-replaced': {
      const about: Phrase = {
        code: 'partIn',
        facts: { part: placeIn(spec, event), step: stepName(event.step) },
      }
      return { kind: event.type, about, reason: event.reason }
    }
    case 'rings-taken-off': {
      const about: Phrase = {
        code: 'partIn',
        facts: { part: pistonIn(spec, event), step: stepName(event.step) },
      }
      return { kind: event.type, about, reason: event.reason }
    }
    case 'ticks-removed': {
      const part = spec.parts.find(({ id }) => id === event.part)?.name ?? event.part
      const about: Phrase = { code: 'partIn', facts: { part, step: stepName(event.step) } }
      return { kind: event.type, about, reason: event.reason }
    }
    case 'step-sent-back':
      return {
        kind: event.type,
        about: { code: 'stepBy', facts: { step: stepName(event.step), person: event.second } },
        reason: event.reason,
      }
    case 'marks-noted':
      if ((before.marks[event.fit]?.[event.part] ?? null) === null) return null
      return { kind: 'marks-noted-again', about: stepCalled(event.step), reason: null }
    case 'shells-chosen':
      if (!chosenBefore.has(event.fit)) return null
      return { kind: 'shells-chosen-again', about: stepCalled(event.step), reason: null }
    case 'readings-noted': {
      const { fit, part, position } = event
      if (before.bearings[fit]?.[part][position] === undefined) return null
      return {
        kind: 'readings-noted-again',
        about: { code: 'partAt', facts: { position, part } },
        reason: null,
      }
    }
    case 'readings-withdrawn':
      return {
        kind: event.type,
        about: { code: 'partAt', facts: { position: event.position, part: event.part } },
        reason: event.reason,
      }
    case 'check-answered':
      if (before.checks[event.step] === undefined) return null
      return { kind: 'check-answered-again', about: stepCalled(event.step), reason: event.note || null }
    case 'build-started':
    case 'half-fitted':
    case 'part-fitted':
    case 'limit-measured':
    case 'limit-accepted':
    case 'rings-fitted':
    case 'crank-turned':
    case 'turning-accepted':
    case 'turning-voided':
    case 'place-done':
    case 'place-undone':
    case 'photo-added':
    case 'photo-skipped':
    case 'photo-withdrawn':
    case 'step-reopened':
    case 'revision-taken-over':
    case 'step-skipped':
    case 'skip-taken-back':
    case 'note-written':
    case 'parts-ticked':
    case 'part-left-over':
    case 'parts-counted':
    case 'bead-laid':
    case 'step-confirmed':
    case 'build-finished':
    case 'build-amended':
    case 'build-voided':
    case 'build-handed-over':
    case 'build-taken-over':
    case 'fork-settled':
    case 'undersize-declared':
    case 'basis-decided':
    case 'shells-pinned':
    case 'shells-released':
    case 'tray-noted':
    case 'thread-read':
    case 'run-started':
    case 'fasteners-declared-new':
    case 'fastener-pulled':
    case 'problem-noted':
    case 'flag-answered':
    case 'pass-repeated':
    case 'run-paused':
    case 'run-resumed':
      return null
    default:
      return event satisfies never
  }
}
