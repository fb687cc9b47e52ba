import { existsSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { makeFolder, writeWhole } from './durable.ts'
import { readMarker } from './marker.ts'

/** The record's file name within the data folder. */
export const recordName = 'bedplate.sqlite'

/** Where the backups of a data folder lie. */
export function backupFolder(dataFolder: string): string {
  return join(dataFolder, 'backups')
}

/** Says where else backups are put. It lies beside them and not in the record, since it is wanted when that is damaged. */
function secondFolderNote(dataFolder: string): string {
  return join(backupFolder(dataFolder), 'second-folder.txt')
}

/** Where backups are put a second time; null for nowhere. Still known when the data folder is gone. */
export function secondFolderOf(dataFolder: string): string | null {
  try {
    // Only the end of the line goes: a folder's own name may end in a blank.
    return readFileSync(secondFolderNote(dataFolder), 'utf8').replace(/\r?\n$/, '') || null
  } catch {
    return existsSync(backupFolder(dataFolder)) ? null : (readMarker(dataFolder)?.secondFolder ?? null)
  }
}

/** Notes where backups are put a second time; null for nowhere. Throws what the system throws. */
export function keepSecondFolder(dataFolder: string, folder: string | null): void {
  makeFolder(backupFolder(dataFolder))
  if (folder === null) rmSync(secondFolderNote(dataFolder), { force: true })
  else writeWhole(secondFolderNote(dataFolder), `${folder}\n`)
}
