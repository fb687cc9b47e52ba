import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readMarker } from './marker.ts'

/** The record's file name within the data folder. */
export const recordName = 'bedplate.sqlite'

/** Where the backups of a data folder lie. */
export function backupFolder(dataFolder: string): string {
  return join(dataFolder, 'backups')
}

/** Says where else backups are put. It lies beside them and not in the record, since it is wanted when that is damaged. */
export function secondFolderNote(dataFolder: string): string {
  return join(backupFolder(dataFolder), 'second-folder.txt')
}

/** Where backups are put a second time; null for nowhere. Still known when the data folder is gone. */
export function secondFolderOf(dataFolder: string): string | null {
  try {
    return readFileSync(secondFolderNote(dataFolder), 'utf8').trim() || null
  } catch {
    return existsSync(backupFolder(dataFolder)) ? null : (readMarker(dataFolder)?.secondFolder ?? null)
  }
}
