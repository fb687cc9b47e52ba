import type { RecordedEvent } from '../events/events.ts'

/** One revision by which a build went, and the last entry that it holds for; the last one holds for all that comes. */
export interface RevisionSpan {
  readonly specSha256: string
  readonly until: number
}

/**
 * The revisions by which a build went, in order; empty before its first entry. To one belong the entries that open steps again
 * because the next is taken over: what they undo was done by it.
 */
export function revisionSpans(
  entries: readonly Pick<RecordedEvent, 'seq' | 'event'>[],
): readonly RevisionSpan[] {
  const spans: { specSha256: string; until: number }[] = []
  for (const [at, { seq, event }] of entries.entries()) {
    if (event.type === 'build-started') spans.push({ specSha256: event.specSha256, until: Infinity })
    if (event.type !== 'revision-taken-over') continue
    const opened = entries
      .slice(at + 1)
      .filter((entry) => entry.event.type === 'step-reopened' && entry.event.byRevision === true)
    const before = spans.at(-1)
    if (before !== undefined) before.until = opened[event.opens.length - 1]?.seq ?? seq
    spans.push({ specSha256: event.specSha256, until: Infinity })
  }
  return spans
}
