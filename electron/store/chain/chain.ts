import { createHash } from 'node:crypto'
import canonicalize from 'canonicalize'
import type { BuildEvent } from '../../../core/builds/index.ts'

/** What is hashed of an entry. `previous` is the hash of the entry before it; null for the first of a build. */
export interface EntryBody {
  readonly build: string
  readonly seq: number
  readonly at: string
  readonly person: string
  readonly event: BuildEvent
  readonly previous: string | null
}

/** An entry as it lies in the record. `body` is never built again to check it: these very bytes were hashed. */
export interface StoredEntry {
  readonly seq: number
  readonly body: string
  readonly sha256: string
}

/** The canonical text of an entry, as RFC 8785 gives it, and its hash. */
export function seal(entry: EntryBody): StoredEntry {
  const body = canonicalize(entry)
  if (body === undefined) throw new Error('an entry has no canonical text')
  return { seq: entry.seq, body, sha256: sha256(body) }
}

export function sha256(text: string): string {
  return createHash('sha256').update(text, 'utf8').digest('hex')
}

/**
 * The number of the first entry that is not as it was confirmed (altered, missing, out of place), or null when all are.
 * It cannot see entries missing at the end: against that, the head code stands on every sheet.
 */
export function firstBroken(build: string, entries: readonly StoredEntry[]): number | null {
  let previous: string | null = null
  for (const [index, entry] of entries.entries()) {
    if (!follows(build, index + 1, previous, entry)) return index + 1
    previous = entry.sha256
  }
  return null
}

/** Whether an entry is the one that belongs at this place of the build, after the entry of this hash, and unaltered. */
export function follows(build: string, place: number, previous: string | null, entry: StoredEntry): boolean {
  return bodyIn(build, place, previous, entry) !== null
}

/** What such an entry says; null for one that does not belong there or was altered. */
export function bodyIn(
  build: string,
  place: number,
  previous: string | null,
  { seq, body, sha256: kept }: StoredEntry,
): EntryBody | null {
  if (seq !== place || sha256(body) !== kept) return null
  const inside = insideOf(body)
  if (inside === null || typeof inside !== 'object') return null
  return inside.build === build && inside.seq === seq && inside.previous === previous
    ? (inside as EntryBody)
    : null
}

/** How a head is shown: the first 16 digits of the hash. */
export function headCode(sha256: string): string {
  return sha256.slice(0, 16)
}

function insideOf(body: string): Partial<EntryBody> | null {
  try {
    return JSON.parse(body) as Partial<EntryBody> | null
  } catch {
    return null
  }
}
