import { chmodSync, existsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { done, refused } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import { stamp } from './backup-name.ts'
import { backupsIn } from './backups.ts'
import { copyTo } from './copy.ts'
import { createRecord, makeFolder } from './create.ts'
import { expectedSchemaDigest, schemaDigest, latestSchemaVersion, migrate, schemaVersion } from './schema.ts'
import { connect, fileProblem } from './sqlite.ts'
import type { Database } from './sqlite.ts'
import { backupFolder, recordName } from './places.ts'
import { storeOn } from './store.ts'
import type { Store } from './store.ts'

/** Above this size the pages are checked in the course of the day, not while somebody waits for the window. */
const checkedAtOpeningBytes = 256 * 1024 * 1024

/**
 * Opens the record of a data folder for this process alone, and makes both where they are missing. A file that is not
 * what it should be is refused in words and left untouched.
 */
export async function openStore(folder: string, now: () => Date): Promise<Outcome<Store>> {
  const file = join(folder, recordName)
  let db: Database | null = null
  try {
    makeFolder(folder)
    if (!existsSync(file)) {
      if (backupsIn(backupFolder(folder)).length > 0) return refused('record-missing', { file })
      createRecord(folder, file)
    }
    const size = statSync(file).size
    if (size === 0) return refused('record-damaged', { file, found: 'it is empty' })
    db = connect(file)
    const outcome = await checked(db, { file, folder, size, now })
    if (!outcome.ok) db.close()
    return outcome
  } catch (error) {
    db?.close()
    const problem = fileProblem(error, file, folder)
    if (problem === null) throw error
    return { ok: false, problem }
  }
}

interface Found {
  readonly file: string
  readonly folder: string
  readonly size: number
  readonly now: () => Date
}

async function checked(db: Database, { file, folder, size, now }: Found): Promise<Outcome<Store>> {
  const version = schemaVersion(db)
  if (version > latestSchemaVersion)
    return refused('record-newer', { file, version, known: latestSchemaVersion })
  if (size <= checkedAtOpeningBytes) {
    const found = String(db.pragma('quick_check(1)', { simple: true }))
    if (found !== 'ok') return refused('record-damaged', { file, found })
  }
  if (schemaDigest(db) !== expectedSchemaDigest(version)) return refused('record-schema-altered', { file })
  if (version < latestSchemaVersion) {
    await copyTo(db, join(folder, `before-schema-${latestSchemaVersion}-${stamp(now())}.sqlite`))
    migrate(db)
  }
  chmodSync(file, 0o600)
  return done(storeOn(db, file))
}
