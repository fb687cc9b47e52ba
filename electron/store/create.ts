import { randomUUID } from 'node:crypto'
import { chmodSync, existsSync, linkSync, mkdirSync, renameSync } from 'node:fs'
import { join } from 'node:path'
import { removeRecord, syncFolder } from './durable.ts'
import { migrate } from './schema.ts'
import { connect } from './sqlite.ts'

/** Makes the data folder, for its owner alone. A folder that was there keeps its rights: they are a person's choice. */
export function makeFolder(folder: string): void {
  mkdirSync(folder, { recursive: true, mode: 0o700 })
}

/**
 * Puts an empty record in place, all at once: it is made beside, then linked to its name, which fails where a record
 * has appeared meanwhile. So a record is never seen half made, and one that is empty is a damaged one.
 */
export function createRecord(folder: string, file: string): void {
  const beside = join(folder, `new-${randomUUID()}.sqlite`)
  try {
    const db = connect(beside)
    try {
      migrate(db)
    } finally {
      db.close()
    }
    try {
      chmodSync(beside, 0o600)
      linkSync(beside, file)
    } catch (error) {
      if (existsSync(file)) return // another host was sooner, and has tidied what lay beside
      if (!(error instanceof Error && 'code' in error && error.code !== 'ENOENT')) throw error
      renameSync(beside, file) // a file system without hard links, as memory sticks have
    }
    syncFolder(folder)
  } finally {
    removeRecord(beside)
  }
}
