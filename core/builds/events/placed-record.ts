import type { PlacedEvent } from './placed-events.ts'

/** That a place is done. */
export interface PlaceDone {
  /** The entry that says it. */
  readonly seq: number
  readonly note: string | null
}

/** By `placedKey`. */
export type PlacedRecord = Readonly<Record<string, PlaceDone>>

/** One place of a step, in one round. */
export function placedKey({ step, place, round }: Pick<PlacedEvent, 'step' | 'place' | 'round'>): string {
  return `${step}/${place}/${round}`
}

/** The record after one more entry. Marks that are set again are looked at again. */
export function evolvePlaced(record: PlacedRecord, seq: number, event: PlacedEvent): PlacedRecord {
  if (event.type === 'place-done') return { ...record, [placedKey(event)]: { seq, note: event.note } }
  const voided = [placedKey(event), ...(event.round === 1 ? [placedKey({ ...event, round: 2 })] : [])]
  return Object.fromEntries(Object.entries(record).filter(([key]) => !voided.includes(key)))
}
