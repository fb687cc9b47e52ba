import { randomUUID } from 'node:crypto'
import { existsSync, readdirSync, renameSync } from 'node:fs'
import { join } from 'node:path'
import { done, refused } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import { stamp } from './backups/backup-name.ts'
import { backupsIn } from './backups/backups.ts'
import { copyTo } from './backups/copy.ts'
import { createRecord } from './create.ts'
import { keepPrivate, makeFolder, removeRecord, syncFile, syncFolder } from './file/durable.ts'
import { inspectRecord } from './backups/inspect.ts'
import { keepMarker, readMarker } from './file/marker.ts'
import { backupFolder, recordName, secondFolderOf } from './file/places.ts'
import { latestSchemaVersion, migrate, schemaVersion } from './schema.ts'
import { connect, fileProblem } from './file/sqlite.ts'
import type { Database } from './file/sqlite.ts'
import { storeOn } from './store.ts'
import type { Store } from './store.ts'

/**
 * Opens the record of a data folder for this process alone, and makes both where they are missing. A file that is not
 * what it should be is refused in words and left untouched, and so is what lies beside it. Where a record was before and
 * is none now, `record-missing` is refused unless `beginEmpty` is asked for.
 */
export async function openStore(
  folder: string,
  now: () => Date,
  { beginEmpty = false }: { readonly beginEmpty?: boolean } = {},
): Promise<Outcome<Store>> {
  const file = join(folder, recordName)
  let db: Database | null = null
  try {
    const hadRecord = wasThere(folder)
    makeFolder(folder)
    if (!existsSync(file)) {
      if (hadRecord && !beginEmpty) return refused('record-missing', { file })
      setAside(folder, now())
      createRecord(folder, file)
    }
    const inspected = inspectRecord(file, folder)
    if (!inspected.ok) return inspected
    db = connect(file)
    if (schemaVersion(db) < latestSchemaVersion) {
      const before = `before-schema-${latestSchemaVersion}-${stamp(now())}-${randomUUID()}.sqlite`
      await copyTo(db, join(folder, before))
      await syncFile(join(folder, before))
      syncFolder(folder)
      migrate(db)
    }
    keepPrivate(file)
    tidy(folder)
    const store = storeOn(db, file)
    keepMarker({ bench: store.bench, dataFolder: folder, secondFolder: secondFolderOf(folder) })
    return done(store)
  } catch (error) {
    db?.close()
    const problem = fileProblem(error, file, folder)
    if (problem === null) throw error
    return { ok: false, problem }
  }
}

/** Whether a folder that has no record now once had one, by all that a record leaves behind. */
export function wasThere(folder: string): boolean {
  if (readMarker(folder) !== null || backupsIn(backupFolder(folder)).length > 0) return true
  return existsSync(folder) && readdirSync(folder).some((name) => remains.test(name))
}

const remains = /^(bedplate\.sqlite-wal|(kept|before-(schema|form))-.*\.sqlite)$/

/** A log without its record would be worked into the new one. */
function setAside(folder: string, at: Date): void {
  const kept = `kept-${stamp(at)}-${randomUUID()}.sqlite`
  for (const rest of ['-wal', '-shm', '-journal'])
    if (existsSync(join(folder, recordName + rest)))
      renameSync(join(folder, recordName + rest), join(folder, kept + rest))
}

const unfinished = /^(new-[0-9a-f-]{36}\.sqlite(-wal|-shm|-journal)?|record-note\.json\.new)$/

/** What was being made when the power went. Only who holds the record may tidy: another host makes its own. */
function tidy(folder: string): void {
  for (const name of readdirSync(folder)) if (unfinished.test(name)) removeRecord(join(folder, name))
  removeRecord(join(backupFolder(folder), 'being-made.sqlite'))
}
