import { readEvent, recordedEvent, type RecordedEvent } from '../../core/builds/index.ts'
import type { ReadEntry } from '../../core/contract/index.ts'
import type { EntryBody, StoredEntry } from './chain/chain.ts'

const entryAround = recordedEvent.omit({ event: true })

/** What an entry says; its event is null where only a newer program knows it. Null for what no program wrote. */
export function readEntry({ seq, body, sha256 }: StoredEntry): ReadEntry | null {
  let inside: Partial<EntryBody> | null
  try {
    inside = JSON.parse(body) as Partial<EntryBody> | null
  } catch {
    return null
  }
  const around = entryAround.safeParse({ seq, at: inside?.at, person: inside?.person, hash: sha256 })
  if (!around.success) return null
  const read = readEvent(inside?.event)
  return { ...around.data, event: read.kind === 'known' ? read.event : null }
}

/** What entries say, up to the first that this version does not know. */
export function eventsIn(entries: readonly StoredEntry[]): readonly RecordedEvent[] {
  const events: RecordedEvent[] = []
  for (const entry of entries) {
    const read = readEntry(entry)
    if (read === null || read.event === null) break
    events.push({ ...read, event: read.event })
  }
  return events
}
