import { buildEvent, type BuildEvent } from './events.ts'

/** An event off the record: one that this program knows, or one to be kept as it is. */
export type ReadEvent = KnownEvent | UnknownEvent

interface KnownEvent {
  readonly kind: 'known'
  readonly event: BuildEvent
}

interface UnknownEvent {
  readonly kind: 'unknown'
  readonly raw: unknown
}

/**
 * Reads an event off the record. What does not fit a known shape comes from a newer program, since an entry's
 * hash has been checked before: it is kept, and the build can be looked at as it was before it, but not added to.
 */
export function readEvent(raw: unknown): ReadEvent {
  const parsed = buildEvent.safeParse(raw)
  return parsed.success ? { kind: 'known', event: parsed.data } : { kind: 'unknown', raw }
}
