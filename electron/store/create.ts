import { randomUUID } from 'node:crypto'
import { existsSync, linkSync, renameSync } from 'node:fs'
import { join } from 'node:path'
import { keepPrivate, removeRecord, syncFolder } from './file/durable.ts'
import { migrate } from './schema.ts'
import { connect } from './file/sqlite.ts'

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
      keepPrivate(beside)
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
