import type { RecordedEvent } from '../../../core/builds/index.ts'

/** When a pull of a procedure was recorded, ISO 8601; null where there is none. */
export function pulledAt(
  events: readonly Pick<RecordedEvent, 'at' | 'event'>[],
  procedure: string,
  pull: number | null,
): string | null {
  const entry = events.findLast(
    ({ event }) => event.type === 'fastener-pulled' && event.procedure === procedure && event.pull === pull,
  )
  return entry?.at ?? null
}
