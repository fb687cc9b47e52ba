import { createHash } from 'node:crypto'
import canonicalize from 'canonicalize'
import type { BuildEvent } from '../../core/build/index.ts'

/** What is hashed of an entry. `previous` is the hash of the entry before it; null for the first of a build. */
export interface EntryBody {
  readonly build: string
  readonly seq: number
  readonly at: string
  readonly person: string
  readonly event: BuildEvent
  readonly previous: string | null
}

/** An entry as it lies in the record. `body` is never built anew to check it: these very bytes were hashed. */
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
  for (const [index, { seq, body, sha256: kept }] of entries.entries()) {
    const place = index + 1
    if (seq !== place || sha256(body) !== kept) return place
    const inside = insideOf(body)
    if (inside?.build !== build || inside.seq !== seq || inside.previous !== previous) return place
    previous = kept
  }
  return null
}

function insideOf(body: string): Partial<EntryBody> | null {
  try {
    return JSON.parse(body) as Partial<EntryBody> | null
  } catch {
    return null
  }
}
