import { closeSync, fsyncSync, openSync, rmSync } from 'node:fs'

/** Waits until the disk has all of a file. */
export function syncFile(file: string): void {
  sync(file, 'r+')
}

/** Makes the names in a folder durable, where the system lets a folder be opened. */
export function syncFolder(folder: string): void {
  if (process.platform !== 'win32') sync(folder, 'r')
}

function sync(path: string, how: 'r' | 'r+'): void {
  const descriptor = openSync(path, how)
  try {
    fsyncSync(descriptor)
  } finally {
    closeSync(descriptor)
  }
}

/** Removes a record that nobody has open, with what SQLite keeps beside it. What cannot be removed is left. */
export function removeRecord(file: string): void {
  for (const rest of ['', '-wal', '-shm', '-journal'])
    try {
      rmSync(file + rest, { force: true })
    } catch {
      // it lies where nothing can be reached, and the caller is about to say so
    }
}
