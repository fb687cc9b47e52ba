import type { LimitEvent } from './limit-events.ts'

type LimitMeasured = Extract<LimitEvent, { type: 'limit-measured' }>

/** The last reading at one place. */
export interface LimitReading extends Pick<LimitMeasured, 'reading' | 'verdict'> {
  readonly seq: number
  /** Why it is accepted although it is outside; null where nobody did. */
  readonly accepted: string | null
}

/** By `placeKey`. */
export type LimitsRecord = Readonly<Record<string, LimitReading>>

/** One place of one thing that is measured in a step. */
export function placeKey({ step, measure, at }: Pick<LimitMeasured, 'step' | 'measure' | 'at'>): string {
  return `${step}/${measure}/${at}`
}

/** The record after one more entry about limits. */
export function evolveLimits(record: LimitsRecord, seq: number, event: LimitEvent): LimitsRecord {
  const key = placeKey(event)
  switch (event.type) {
    case 'limit-measured': {
      const { reading, verdict } = event
      return { ...record, [key]: { seq, reading, verdict, accepted: null } }
    }
    case 'limit-accepted': {
      const before = record[key]
      return before === undefined ? record : { ...record, [key]: { ...before, accepted: event.reason } }
    }
    case 'measured-part-replaced':
      return Object.fromEntries(Object.entries(record).filter(([each]) => each !== key))
    default:
      return event satisfies never
  }
}
