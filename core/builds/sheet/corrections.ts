import type { EngineSpec } from '../../engine/index.ts'
import { numberOf } from '../../tightening/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { evolve } from '../events/evolve.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
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
    | 'bead-wiped-off'
    | 'marks-noted-again'
    | 'shells-chosen-again'
    | 'check-answered-again'
    | 'readings-noted-again'
    | 'readings-withdrawn'
    | 'step-sent-back'
  /** What it was about: a fastener's number with its procedure, a half, a step, a part. */
  readonly about: string
  /** Null where none is asked for. */
  readonly reason: string | null
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

const partName = { housing: 'bore', journal: 'journal' } as const

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
  switch (event.type) {
    case 'pull-read-again':
    case 'pull-taken-back': {
      const { procedure, pull, reason } = event
      const fastener = before.runs[procedure]?.pulls.find(({ number }) => number === pull)?.fastener ?? null
      const name = spec.procedures.find(({ id }) => id === procedure)?.name ?? procedure
      return {
        kind: event.type,
        about: [name, numberOf(spec, fastener) ?? `pull ${pull}`].join(', '),
        reason,
      }
    }
    case 'fastener-loosened':
    case 'fastener-replaced':
      return {
        kind: event.type,
        about: `${procedureName(event.procedure)}, ${numberOf(spec, event.fastener) ?? event.fastener}`,
        reason: event.type === 'fastener-loosened' ? event.reason : null,
      }
    case 'run-restarted':
      return {
        kind: event.type,
        about: `${procedureName(event.procedure)}, from pass ${event.pass + 1}`,
        reason: event.reason,
      }
    case 'half-taken-out':
      return { kind: event.type, about: `${event.position} ${event.half}`, reason: event.reason }
    case 'part-taken-out':
    case 'bead-wiped-off':
      return { kind: event.type, about: stepName(event.step), reason: event.reason }
    case 'step-sent-back':
      return { kind: event.type, about: `${stepName(event.step)}, by ${event.second}`, reason: event.reason }
    case 'marks-noted':
      if ((before.marks[event.fit]?.[event.part] ?? null) === null) return null
      return { kind: 'marks-noted-again', about: stepName(event.step), reason: null }
    case 'shells-chosen':
      if (!chosenBefore.has(event.fit)) return null
      return { kind: 'shells-chosen-again', about: stepName(event.step), reason: null }
    case 'readings-noted': {
      const { fit, part, position } = event
      if (before.bearings[fit]?.[part][position] === undefined) return null
      return { kind: 'readings-noted-again', about: `${position}, ${partName[part]}`, reason: null }
    }
    case 'readings-withdrawn':
      return {
        kind: event.type,
        about: `${event.position}, ${partName[event.part]}`,
        reason: event.reason,
      }
    case 'check-answered':
      if (before.checks[event.step] === undefined) return null
      return { kind: 'check-answered-again', about: stepName(event.step), reason: event.note || null }
    case 'build-started':
    case 'half-fitted':
    case 'part-fitted':
    case 'bead-laid':
    case 'step-confirmed':
    case 'build-finished':
    case 'build-amended':
    case 'build-voided':
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
