import { keepPrivate } from './durable.ts'
import type { Database } from './sqlite.ts'

/** Copied between two answers to other requests: about a millisecond's worth. */
const pagesAtOnce = 100

/**
 * Copies the open record by SQLite's own backup. The file is never read by other means while it is open: closing that
 * descriptor would drop the locks that SQLite holds on it. Throws when it is stopped.
 */
export async function copyTo(db: Database, file: string, signal?: AbortSignal): Promise<void> {
  await db.backup(file, {
    progress: () => {
      signal?.throwIfAborted()
      return pagesAtOnce
    },
  })
  keepPrivate(file)
}
