import { createHash } from 'node:crypto'
import { createReadStream, createWriteStream, existsSync, readdirSync, renameSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { done, problem, refused } from '../../../core/problem/index.ts'
import type { Outcome, Problem } from '../../../core/problem/index.ts'
import { backupName, newerFirst, expiredBackups, readBackupName } from './backup-name.ts'
import type { BackupName } from './backup-name.ts'
import { benchOf } from '../bench.ts'
import { copyTo } from './copy.ts'
import { makeFolder, removeRecord, syncFile, syncFolder } from '../file/durable.ts'
import { expectedSchemaDigest, latestSchemaVersion, schemaDigest, schemaVersion } from '../schema.ts'
import { codeOf } from '../file/code-of.ts'
import { connect, fileProblem } from '../file/sqlite.ts'
import type { Database } from '../file/sqlite.ts'
import { verifyChain } from '../chain/verify-chain.ts'
import type { ChainVerification } from '../chain/verify-chain.ts'

/** A backup that lies in a folder under the name it was given when it had been checked. */
export interface Backup extends BackupName {
  readonly file: string
  readonly sizeBytes: number
}

/** All that lie in a folder, of whatever bench, the newest of each first. A folder that cannot be read has none. */
export function backupsIn(folder: string): readonly Backup[] {
  let names: readonly string[]
  try {
    names = readdirSync(folder)
  } catch {
    return []
  }
  return names
    .map(readBackupName)
    .filter((name) => name !== null)
    .flatMap((name) => {
      const file = join(folder, name.name)
      const found = statSync(file, { throwIfNoEntry: false })
      return found?.isFile() === true ? [{ ...name, file, sizeBytes: found.size }] : []
    })
    .sort(newerFirst)
}

/** Where and as what a backup is made. */
export interface BackupPlace {
  readonly folder: string
  readonly at: Date
  /** The number of the newest backup that is known of anywhere: the next one has the number after it. */
  readonly after: number
  /** Whether the folder is the bench's own, so that backups that have outlived themselves may go. */
  readonly rotate: boolean
  readonly signal: AbortSignal
}

/**
 * Copies the open record into a folder, opens the copy and verifies it; only then it gets the name by which it counts. A
 * build that is known to be broken does not keep the others from being saved: the name says so. Null when it was
 * stopped, which leaves nothing behind. Those that have outlived themselves go.
 */
export async function makeBackup(db: Database, place: BackupPlace): Promise<Outcome<Backup | null>> {
  const { folder, at, signal } = place
  const beside = join(folder, 'being-made.sqlite')
  try {
    makeFolder(folder)
    removeRecord(beside)
    await copyTo(db, beside, signal)
    const checked = await checkRecord(beside, signal)
    if (!checked.ok) return refused('backup-not-sound', {})
    if (checked.value === null) return done(null)
    await syncFile(beside)
    const bench = benchOf(db)
    const sequence =
      1 + Math.max(place.after, ...ownBackups(backupsIn(folder), bench).map((it) => it.sequence))
    const { breaks, photoBreaks: _, ...found } = checked.value
    const name = backupName(at, { bench, sequence }, { ...found, broken: breaks.length })
    renameSync(beside, join(folder, name))
    syncFolder(folder)
    if (place.rotate) rotate(folder, bench, 'own')
    const made = backupsIn(folder).find((backup) => backup.name === name)
    return made === undefined ? refused('backup-lost', { folder }) : done(made)
  } catch (error) {
    return signal.aborted ? done(null) : { ok: false, problem: backupProblem(error, folder) }
  } finally {
    removeRecord(beside)
  }
}

/** Puts a copy of a backup in another folder, read back and compared before it counts. Others' backups are left alone. */
export async function copyBackup(backup: Backup, folder: string): Promise<Outcome<null>> {
  const beside = join(folder, `${backup.name}.part`)
  try {
    if (backup.bench !== null) tidyCopies(folder, backup.bench)
    await pipeline(createReadStream(backup.file), createWriteStream(beside, { mode: 0o600 }))
    await syncFile(beside)
    if ((await hashOf(beside)) !== (await hashOf(backup.file))) return refused('backup-lost', { folder })
    renameSync(beside, join(folder, backup.name))
    syncFolder(folder)
    if (backup.bench !== null) rotate(folder, backup.bench, 'shared')
    return done(null)
  } catch (error) {
    return { ok: false, problem: backupProblem(error, folder) }
  } finally {
    removeRecord(beside)
  }
}

/**
 * Opens a closed record and verifies all of it; what is broken in it is in the answer. Refuses what is no record, one of a
 * newer program, an altered schema, and pages that cannot be read. Null when it was stopped.
 */
export async function checkRecord(
  file: string,
  signal: AbortSignal,
): Promise<Outcome<(ChainVerification & { readonly bench: string | null }) | null>> {
  let db: Database | null = null
  try {
    db = connect(file)
    const version = schemaVersion(db)
    if (version === 0) return refused('record-damaged', { file, found: 'empty' })
    if (version > latestSchemaVersion)
      return refused('record-newer', { file, version, known: latestSchemaVersion })
    if (schemaDigest(db) !== expectedSchemaDigest(version)) return refused('record-schema-altered', { file })
    const verification = await verifyChain(db, { only: null, signal, onProgress: () => undefined })
    return done(verification && { ...verification, bench: benchOf(db) })
  } catch (error) {
    const found = fileProblem(error, file, file)
    if (found === null) throw error
    return { ok: false, problem: found }
  } finally {
    db?.close()
  }
}

/** Those of one bench; a name without a bench counts as its own where nobody else puts any. */
export function ownBackups<Name extends BackupName>(
  backups: readonly Name[],
  bench: string | null,
  unnamedToo = false,
): readonly Name[] {
  return backups.filter((backup) => backup.bench === bench || (unnamedToo && backup.bench === null))
}

function rotate(folder: string, bench: string, place: 'own' | 'shared'): void {
  const own = ownBackups(backupsIn(folder), bench, place === 'own')
  for (const { name } of expiredBackups(own)) removeRecord(join(folder, name))
}

/** What this bench was copying into a shared folder when the power went. Others' may be being copied now. */
function tidyCopies(folder: string, bench: string): void {
  for (const name of readdirSync(folder))
    if (name.endsWith('.part') && readBackupName(name.slice(0, -'.part'.length))?.bench === bench)
      removeRecord(join(folder, name))
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
