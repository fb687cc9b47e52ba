import type { RecordedEvent } from './events.ts'

/** Who made an entry, and when the machine's clock said it was. Order is by `seq`, never by the clock. */
export interface Stamp {
  readonly seq: number
  /** UTC, ISO 8601. */
  readonly at: string
  readonly person: string
}

export function stampOf({ seq, at, person }: RecordedEvent): Stamp {
  return { seq, at, person }
}
