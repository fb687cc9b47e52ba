import { closeSync, fsyncSync, openSync, rmSync } from 'node:fs'
import { open } from 'node:fs/promises'

/** Waits until the disk has all of a file; a share may take seconds, and others are answered meanwhile. */
export async function syncFile(file: string): Promise<void> {
  const handle = await open(file, 'r+')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/** Makes the names in a folder durable, where the system lets a folder be opened. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return
  const descriptor = openSync(folder, 'r')
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
