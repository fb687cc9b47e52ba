import { createHash } from 'node:crypto'
import { createReadStream, existsSync, mkdirSync, readdirSync, renameSync, statSync } from 'node:fs'
import { copyFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { done, problem, refused } from '../../core/problem/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import { backupName, outlived, readBackupName } from './backup-name.ts'
import type { BackupName } from './backup-name.ts'
import { copyTo } from './copy.ts'
import { removeRecord, syncFile } from './durable.ts'
import { expectedSchemaDigest, schemaDigest, latestSchemaVersion, schemaVersion } from './schema.ts'
import { codeOf, connect, fileProblem } from './sqlite.ts'
import type { Database } from './sqlite.ts'
import { verifyChain } from './verify-chain.ts'
import type { ChainVerification } from './verify-chain.ts'

/** A backup that lies in a folder under the name it was given when it had been checked. */
export interface Backup extends BackupName {
  readonly file: string
  readonly sizeBytes: number
}

/** Newest first. A folder that is not there, or cannot be read, has none. */
export function backupsIn(folder: string): readonly Backup[] {
  try {
    return readdirSync(folder)
      .map(readBackupName)
      .filter((name) => name !== null)
      .map((name) => ({
        ...name,
        file: join(folder, name.name),
        sizeBytes: statSync(join(folder, name.name)).size,
      }))
      .sort((a, b) => (a.name < b.name ? 1 : -1))
  } catch {
    return []
  }
}

/**
 * Copies the open record into a folder, opens the copy and verifies its chains; only then it gets the name by which it
 * counts. Null when it was stopped, which leaves nothing behind. Those that have outlived themselves go.
 */
export async function makeBackup(
  db: Database,
  folder: string,
  at: Date,
  signal: AbortSignal,
): Promise<Outcome<Backup | null>> {
  const beside = join(folder, 'being-made.sqlite')
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    removeRecord(beside)
    await copyTo(db, beside, signal)
    const verified = await checkRecord(beside, signal)
    if (!verified.ok) return refused('backup-not-sound', {})
    if (verified.value === null) return done(null)
    await syncFile(beside)
    const name = backupName(at, verified.value)
    renameSync(beside, join(folder, name))
    rotate(folder)
    const made = backupsIn(folder).find((backup) => backup.name === name)
    return made === undefined ? refused('backup-lost', { folder }) : done(made)
  } catch (error) {
    return signal.aborted ? done(null) : { ok: false, problem: backupProblem(error, folder) }
  } finally {
    removeRecord(beside)
  }
}

/** Puts a copy of a backup in another folder, read back and compared before it counts. */
export async function copyBackup(backup: Backup, folder: string): Promise<Outcome<null>> {
  const beside = join(folder, `${backup.name}.part`)
  try {
    await copyFile(backup.file, beside)
    await syncFile(beside)
    if ((await hashOf(beside)) !== (await hashOf(backup.file))) return refused('backup-lost', { folder })
    renameSync(beside, join(folder, backup.name))
    rotate(folder)
    return done(null)
  } catch (error) {
    return { ok: false, problem: backupProblem(error, folder) }
  } finally {
    removeRecord(beside)
  }
}

/**
 * Opens a closed record and verifies all of it. Refuses what is no record, one of a newer program, an altered schema, pages
 * that cannot be read, and chains that are broken. Null when it was stopped.
 */
export async function checkRecord(
  file: string,
  signal: AbortSignal,
): Promise<Outcome<ChainVerification | null>> {
  let db: Database | null = null
  try {
    db = connect(file)
    const version = schemaVersion(db)
    if (version === 0) return refused('record-damaged', { file, found: 'it is empty' })
    if (version > latestSchemaVersion)
      return refused('record-newer', { file, version, known: latestSchemaVersion })
    if (schemaDigest(db) !== expectedSchemaDigest(version)) return refused('record-schema-altered', { file })
    const verification = await verifyChain(db, { only: null, signal, onProgress: () => undefined })
    const [first] = verification?.breaks ?? []
    return first === undefined
      ? done(verification)
      : refused('record-damaged', {
          file,
          found: `entry ${first.entry ?? 1} of a build is not what was confirmed`,
        })
  } catch (error) {
    const found = fileProblem(error, file, file)
    if (found === null) throw error
    return { ok: false, problem: found }
  } finally {
    db?.close()
  }
}

function rotate(folder: string): void {
  for (const { name } of outlived(backupsIn(folder))) removeRecord(join(folder, name))
}

async function hashOf(file: string): Promise<string> {
  const hash = createHash('sha256')
  await pipeline(createReadStream(file), hash)
  return hash.digest('hex')
}

/** Why a backup could not be put in a folder; a bug is thrown on. */
export function backupProblem(error: unknown, folder: string): Problem {
  const code = codeOf(error)
  if (code === 'SQLITE_FULL' || code === 'ENOSPC' || code === 'EDQUOT')
    return problem('backup-not-saved', { folder, reason: 'full' })
  if (code.startsWith('SQLITE_CORRUPT')) return problem('backup-not-sound', {})
  if (!existsSync(folder)) return problem('backup-not-saved', { folder, reason: 'gone' })
  if (/^(SQLITE_|E[A-Z]+$)/.test(code)) return problem('backup-not-saved', { folder, reason: 'closed' })
  throw error
}
