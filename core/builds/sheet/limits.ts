import type { EngineSpec } from '../../engine/index.ts'
import type { ReadWith } from '../../instrument/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import type { LimitReading } from '../events/limit-record.ts'
import { isMeasured, measuresIn, type StepMeasure } from '../limits/measures-in.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'

/** One reading against limits. Earlier ones of the same place stay beside the one that counts. */
export interface SheetLimit extends Stamp, Pick<LimitReading, 'reading' | 'verdict' | 'accepted'> {
  readonly step: string
  readonly measure: StepMeasure
  /** As it is called. */
  readonly place: string
  /** Null where it is not known. */
  readonly readWith: ReadWith | null
  /** What was replaced because of this reading; null where nothing was. */
  readonly replaced: string | null
  /** False when the place was measured again later, its part replaced, or its step opened again. */
  readonly counts: boolean
}

export function limitsOn(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly SheetLimit[] {
  const rows: SheetLimit[] = []
  /** By step: the sheet has one line for all that share a measure. */
  const known = new Map<string, readonly StepMeasure[]>()
  for (const entry of entries) {
    const { event } = entry
    if (event.type === 'step-reopened') {
      const name = spec.steps.find(({ id }) => id === event.step)?.name
      rows.forEach((row, index) => {
        if (row.step === name && row.counts) rows[index] = { ...row, counts: false }
      })
    }
    if (!('measure' in event)) continue
    const step = spec.steps.find(({ id }) => id === event.step)
    if (step === undefined || !isMeasured(step)) continue
    const measures = known.get(step.id) ?? measuresIn(spec, step)
    known.set(step.id, measures)
    const measure = measures.find(({ id }) => id === event.measure)
    if (measure === undefined) continue
    const place = measure.at.find(({ key }) => key === event.at)?.text ?? event.at
    const last = rows.findLastIndex(
      (row) => row.step === step.name && row.measure === measure && row.place === place,
    )
    const before = rows[last]
    if (event.type === 'limit-measured') {
      if (before !== undefined) rows[last] = { ...before, counts: false }
      const { reading, readWith = null, verdict } = event
      const row = { step: step.name, measure, place, reading, readWith, verdict }
      rows.push({ ...stampOf(entry), ...row, accepted: null, replaced: null, counts: true })
    } else if (before !== undefined)
      rows[last] =
        event.type === 'limit-accepted'
          ? { ...before, accepted: event.reason }
          : { ...before, replaced: event.reason, counts: false }
  }
  return rows
}
