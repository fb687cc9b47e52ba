import { randomUUID } from 'node:crypto'
import { existsSync, renameSync } from 'node:fs'
import { basename, join } from 'node:path'
import { done, refused } from '../../../core/problem/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { readBackupName, stamp } from './backup-name.ts'
import { backupProblem, checkRecord } from './backups.ts'
import { copyWhole } from './copy.ts'
import { keepPrivate, makeFolder, removeRecord, syncFile, syncFolder } from '../file/durable.ts'
import { recordName } from '../file/places.ts'

/**
 * Puts a copy of a backup in the place of the record, which must be closed; the present file is kept under another name,
 * its write-ahead log with it. The copy is verified first, and the backup itself only read. Answers with the name that
 * the present file was given, which no other file ever had; null where there was none. A power cut in between leaves a
 * folder without a record, which `openStore` does not take for a new one.
 */
export async function restoreRecord(
  folder: string,
  backup: string,
  at: Date,
): Promise<Outcome<string | null>> {
  const file = join(folder, recordName)
  const beside = join(folder, `new-${randomUUID()}.sqlite`)
  try {
    makeFolder(folder)
    copyWhole(backup, beside)
    keepPrivate(beside)
    const checked = await checkRecord(beside, new AbortController().signal)
    if (!checked.ok || checked.value === null) return refused('backup-unusable', { name: backup })
    const name = readBackupName(basename(backup))
    const isBroken = checked.value.breaks.length > (name?.broken ?? 0)
    const isOfAnotherBench = name !== null && name.bench !== null && name.bench !== checked.value.bench
    if (isBroken || isOfAnotherBench) return refused('backup-unusable', { name: backup })
    await syncFile(beside)
    const remains = ['-wal', '-shm', ''].filter((rest) => existsSync(file + rest))
    // The whole of a random id: a name that was there before would be overwritten. A log without its file is kept too.
    const kept = `kept-${stamp(at)}-${randomUUID()}.sqlite`
    for (const rest of remains) renameSync(file + rest, join(folder, kept + rest))
    renameSync(beside, file)
    syncFolder(folder)
    return done(remains.includes('') ? kept : null)
  } catch (error) {
    return { ok: false, problem: backupProblem(error, folder) }
  } finally {
    removeRecord(beside)
  }
}
