import type { SetGap } from '../../engine/index.ts'
import type { RingEvent } from './ring-events.ts'

/** That the rings of a piston are on. */
export interface RingsFitted {
  /** The entry that says it. */
  readonly seq: number
  readonly gaps: readonly SetGap[]
}

/** By `pistonKey`. */
export type RingsRecord = Readonly<Record<string, RingsFitted>>

/** One piston in one step. */
export function pistonKey({ step, cylinder }: Pick<RingEvent, 'step' | 'cylinder'>): string {
  return `${step}/${cylinder}`
}

export function evolveRings(record: RingsRecord, seq: number, event: RingEvent): RingsRecord {
  const key = pistonKey(event)
  if (event.type === 'rings-fitted') return { ...record, [key]: { seq, gaps: event.gaps } }
  return Object.fromEntries(Object.entries(record).filter(([each]) => each !== key))
}
