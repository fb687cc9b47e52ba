import { randomUUID } from 'node:crypto'
import { chmodSync, copyFileSync, existsSync, renameSync } from 'node:fs'
import { join } from 'node:path'
import { done, refused } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import { stamp } from './backup-name.ts'
import { backupProblem, checkRecord } from './backups.ts'
import { removeRecord, syncFile, syncFolder } from './durable.ts'
import { recordName } from './places.ts'

/**
 * Puts a copy of a backup in the place of the record, which must be closed; the present file is kept under another name,
 * its write-ahead log with it. The copy is verified first, and the backup itself only read. Answers with the name that the
 * present file was given; null where there was none. A power cut in between leaves a folder without a record, which
 * `openStore` does not take for a new one while there are backups.
 */
export async function restoreRecord(
  folder: string,
  backup: string,
  at: Date,
): Promise<Outcome<string | null>> {
  const file = join(folder, recordName)
  const beside = join(folder, `new-${randomUUID()}.sqlite`)
  try {
    copyFileSync(backup, beside)
    chmodSync(beside, 0o600)
    const verified = await checkRecord(beside, new AbortController().signal)
    if (!verified.ok) return refused('backup-unusable', { name: backup })
    await syncFile(beside)
    const kept = existsSync(file) ? `kept-${stamp(at)}.sqlite` : null
    for (const rest of ['-wal', '-shm', ''])
      if (kept !== null && existsSync(file + rest)) renameSync(file + rest, join(folder, kept + rest))
    renameSync(beside, file)
    syncFolder(folder)
    return done(kept)
  } catch (error) {
    return { ok: false, problem: backupProblem(error, folder) }
  } finally {
    removeRecord(beside)
  }
}
