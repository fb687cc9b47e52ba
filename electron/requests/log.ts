import { appendFileSync, renameSync, statSync } from 'node:fs'
import { homedir } from 'node:os'
import { dirname, join } from 'node:path'
import { makeFolder } from '../store/index.ts'

/** When the log is this long it is put aside, under the number 1; what was 1 becomes 2, and 2 goes. */
const mostBytes = 256 * 1024

/**
 * A log of starts and of the program's own mistakes, in the data folder. It is given no names and nothing that was typed;
 * the home folder is left out of its paths. A log that cannot be written is done without.
 */
export function openLog(dataFolder: string, now: () => Date): (line: string) => void {
  const file = join(dataFolder, 'log', 'bedplate.log')
  const root = join(import.meta.dirname, '../..')
  return (line) => {
    try {
      makeFolder(dirname(file))
      turnOver(file)
      const plain = line.replaceAll(root, '…').replaceAll(dataFolder, '(data)').replaceAll(homedir(), '~')
      appendFileSync(file, `${now().toISOString()} ${plain}\n`, { mode: 0o600 })
    } catch {
      // the disk is full or the folder closed, which the record reports
    }
  }
}

function turnOver(file: string): void {
  if ((statSync(file, { throwIfNoEntry: false })?.size ?? 0) < mostBytes) return
  if (statSync(`${file}.1`, { throwIfNoEntry: false }) !== undefined) renameSync(`${file}.1`, `${file}.2`)
  renameSync(file, `${file}.1`)
}
