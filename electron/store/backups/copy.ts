import { closeSync, fstatSync, openSync, readSync, writeFileSync } from 'node:fs'
import { keepPrivate } from '../file/durable.ts'
import type { Database } from '../file/sqlite.ts'

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

const bytesAtOnce = 1024 * 1024

/**
 * Copies a file that nobody has open. Throws what the system throws, and `EIO` where the disk gives back less than it says
 * the file has: `copyFileSync` asks for the rest for ever.
 */
export function copyWhole(from: string, to: string): void {
  const [source, copy] = [openSync(from, 'r'), openSync(to, 'w', 0o600)]
  try {
    const { size } = fstatSync(source)
    const buffer = Buffer.alloc(bytesAtOnce)
    let copied = 0
    for (let read = -1; read !== 0; copied += read) {
      read = readSync(source, buffer, 0, bytesAtOnce, null)
      writeFileSync(copy, buffer.subarray(0, read))
    }
    if (copied < size)
      throw Object.assign(new Error(`${copied} of ${size} bytes could be read`), { code: 'EIO' })
  } finally {
    closeSync(source)
    closeSync(copy)
  }
}
