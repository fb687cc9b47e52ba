import type { Length } from '../../quantity/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import type { ReadWith } from '../../instrument/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import type { CheckAnswer } from '../events/state.ts'
import { washersCalled } from '../steps/check-note.ts'

/** One answer to a check, its thrust washers as they are called. Earlier answers stay beside the one that counts. */
export interface SheetCheck extends Stamp, CheckAnswer {
  readonly step: string
  /** Null where it is not known, and without a reading. */
  readonly readWith: ReadWith | null
  readonly limits: { readonly least: Length; readonly most: Length } | null
  /** False when the check was answered again later, or is to be. */
  readonly counts: boolean
}

export function checksOn(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly SheetCheck[] {
  const last = new Map<string, number>()
  for (const { seq, event } of entries) {
    if (event.type === 'check-answered') last.set(event.step, seq)
    if (event.type === 'step-reopened') last.delete(event.step)
  }
  return entries.flatMap((entry) => {
    const { event } = entry
    if (event.type !== 'check-answered') return []
    const step = spec.steps.find(({ id }) => id === event.step)
    const { type: _, version: __, readWith = null, ...answer } = event
    const limits = (step?.kind === 'check' ? step.reading : undefined) ?? null
    const counts = last.get(event.step) === entry.seq
    return [
      {
        ...stampOf(entry),
        ...washersCalled(spec, answer),
        readWith,
        step: step?.name ?? event.step,
        limits,
        counts,
      },
    ]
  })
}
