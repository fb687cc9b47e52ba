import { join } from 'node:path'

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
