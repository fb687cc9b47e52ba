import { chmodSync } from 'node:fs'
import type { Database } from './sqlite.ts'

/**
 * Copies the open record by SQLite's own backup. The file is never read by other means while it is open: closing that
 * descriptor would drop the locks that SQLite holds on it.
 */
export async function copyTo(db: Database, file: string): Promise<void> {
  await db.backup(file)
  chmodSync(file, 0o600)
}
