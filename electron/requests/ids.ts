import { v7 } from 'uuid'

/** Milliseconds that the id of a build begins with, by RFC 9562, section 5.7; 0 for any other text. */
function millisecondsIn(id: string): number {
  return /^[0-9a-f]{8}-[0-9a-f]{4}-7/.test(id) ? Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16) : 0
}

/**
 * Ids of builds, each after the one before and after the last one in the record: lists go by them, and the clock may have
 * been set back since.
 */
export function newIds(last: string | null, nowMs: () => number): () => string {
  let latest = last === null ? 0 : millisecondsIn(last)
  return () => v7({ msecs: (latest = Math.max(latest + 1, nowMs())) })
}
