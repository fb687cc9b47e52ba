import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  mkdtempSync,
  openSync,
  readSync,
  rmSync,
  statSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { done, refused } from '../../../core/problem/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { copyWhole } from './copy.ts'
import { recordName } from '../file/places.ts'
import { expectedSchemaDigest, latestSchemaVersion, schemaDigest, schemaVersion } from '../schema.ts'
import { codeOf } from '../file/code-of.ts'
import { applicationId, connect, fileProblem } from '../file/sqlite.ts'

/** Above this size the pages are checked in the course of the day, not while somebody waits for the window. */
const checkedAtOpeningBytes = 64 * 1024 * 1024

/** What is found in a record that can be opened. */
export interface InspectedRecord {
  readonly builds: number
}

const magic = 'SQLite format 3\0'
const headerBytes = 100

/** Where a file's header has what is looked at here, by SQLite's file format, section 1.3. */
const at = { writeVersion: 18, readVersion: 19, applicationId: 68 } as const
const walVersion = 2

/**
 * Whether a file is a record that this program can open, found out without changing it or what lies beside it. SQLite
 * itself works a log into the file when it closes it, so a file with a log is never opened here: a copy is. Refuses
 * `record-in-use`, `record-damaged`, `record-not-a-database`, `record-of-another-program`, `record-newer`,
 * `record-schema-altered`, and throws what the system throws.
 */
export function inspectRecord(file: string, folder: string): Outcome<InspectedRecord> {
  accessSync(folder, constants.W_OK | constants.X_OK) // SQLite would open it to read, and fail at the first write
  accessSync(file, constants.R_OK | constants.W_OK)
  if (statSync(file).size === 0) return refused('record-damaged', { file, found: 'empty' })
  const header = headerOf(file)
  if (header.length < headerBytes || header.toString('latin1', 0, magic.length) !== magic)
    return refused('record-not-a-database', { file })
  if (header.readUInt32BE(at.applicationId) !== applicationId)
    return refused('record-of-another-program', { file })
  if (isInUse(file)) return refused('record-in-use', { folder })
  const isPlain = header[at.writeVersion] === walVersion && header[at.readVersion] === walVersion
  const isAlone = ['-wal', '-journal'].every((rest) => !existsSync(file + rest))
  return isPlain && isAlone ? inspectedRecord(file, file, folder) : examinedInCopy(file, folder)
}

function headerOf(file: string): Buffer {
  const descriptor = openSync(file, 'r')
  try {
    const header = Buffer.alloc(headerBytes)
    return header.subarray(0, readSync(descriptor, header, 0, headerBytes, 0))
  } finally {
    closeSync(descriptor)
  }
}

/** Asks for a reader's lock, which a running host does not give; nothing is read or written. */
function isInUse(file: string): boolean {
  let db: Database.Database | null = null
  try {
    db = new Database(file, { readonly: true, timeout: 250 })
    db.pragma('locking_mode = EXCLUSIVE')
    db.pragma('application_id')
    return false
  } catch (error) {
    return /^SQLITE_(BUSY|LOCKED)/.test(codeOf(error)) // any other is reported when the record is opened
  } finally {
    db?.close()
  }
}

function examinedInCopy(file: string, folder: string): Outcome<InspectedRecord> {
  const beside = mkdtempSync(join(tmpdir(), 'bedplate-look-'))
  try {
    const copy = join(beside, recordName)
    for (const rest of ['', '-wal', '-journal'])
      if (existsSync(file + rest)) copyWhole(file + rest, copy + rest)
    return inspectedRecord(copy, file, folder)
  } finally {
    rmSync(beside, { recursive: true, force: true })
  }
}

/** `file` is what is opened, `named` what a problem names. */
function inspectedRecord(file: string, named: string, folder: string): Outcome<InspectedRecord> {
  let db: Database.Database | null = null
  try {
    db = connect(file)
    const version = schemaVersion(db)
    if (version > latestSchemaVersion)
      return refused('record-newer', { file: named, version, known: latestSchemaVersion })
    if (statSync(file).size <= checkedAtOpeningBytes) {
      const found = String(db.pragma('quick_check(1)', { simple: true }))
      if (found !== 'ok') return refused('record-damaged', { file: named, found: { check: found } })
    }
    if (schemaDigest(db) !== expectedSchemaDigest(version))
      return refused('record-schema-altered', { file: named })
    return done({ builds: Number(db.prepare('SELECT count(*) FROM build').pluck().get()) })
  } catch (error) {
    const found = fileProblem(error, named, folder)
    if (found === null) throw error
    return { ok: false, problem: found }
  } finally {
    db?.close()
  }
}
