import type { BuildEvent, RecordedEvent } from '../events/events.ts'

/** Those entries that hold an event of one type, in their order. */
export function entriesOf<Type extends BuildEvent['type']>(entries: readonly RecordedEvent[], type: Type) {
  return entries.filter(
    (entry): entry is RecordedEvent & { readonly event: Extract<BuildEvent, { type: Type }> } =>
      entry.event.type === type,
  )
}
