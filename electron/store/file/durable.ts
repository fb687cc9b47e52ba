import {
  chmodSync,
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { open } from 'node:fs/promises'
import { dirname, resolve } from 'node:path'
import { codeOf } from './code-of.ts'

/** Waits until the disk has all of a file; a share may take seconds, and others are answered meanwhile. */
export async function syncFile(file: string): Promise<void> {
  const handle = await open(file, 'r+')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/** File systems that know no such thing, as some shares and memory sticks: there is nothing to be done about it. */
const notKnownThere = /^(EINVAL|ENOTSUP|EOPNOTSUPP|ENOSYS)$/

/** Makes the names in a folder durable, where the system lets a folder be opened and synced. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return
  const descriptor = openSync(folder, 'r')
  try {
    fsyncSync(descriptor)
  } catch (error) {
    if (!notKnownThere.test(codeOf(error))) throw error
  } finally {
    closeSync(descriptor)
  }
}

/**
 * Makes a folder for its owner alone, durably, with those above it that are missing. One that was there keeps its rights:
 * they are a person's choice. Throws what the system throws. (`mkdirSync` with `recursive` never ends where the system
 * answers that the folder above is not there although it is, as it does in `/proc`.)
 */
export function makeFolder(folder: string): void {
  const missing: string[] = []
  for (let at = resolve(folder); !isThere(at) && dirname(at) !== at; at = dirname(at)) missing.unshift(at)
  for (const each of missing) {
    try {
      mkdirSync(each, { mode: 0o700 })
    } catch (error) {
      if (codeOf(error) !== 'EEXIST' || !statSync(each).isDirectory()) throw error // else another start was sooner
    }
    syncFolder(dirname(each))
  }
}

function isThere(path: string): boolean {
  try {
    return statSync(path, { throwIfNoEntry: false }) !== undefined
  } catch (error) {
    if (codeOf(error) === 'ELOOP' || codeOf(error) === 'ENOTDIR') return false // to be made, which says why it cannot be
    throw error
  }
}

/** Keeps a file for its owner alone. A FAT disk has no such rights, and refuses (Linux, fs/fat/file.c, `fat_sanitize_mode`). */
export function keepPrivate(file: string): void {
  try {
    chmodSync(file, 0o600)
  } catch (error) {
    if (codeOf(error) !== 'EPERM' && !notKnownThere.test(codeOf(error))) throw error
  }
}

/** Writes a small file so that after a power cut it is the old one or the new one, whole. */
export function writeWhole(file: string, text: string): void {
  const beside = `${file}.new`
  writeFileSync(beside, text, { mode: 0o600, flush: true })
  renameSync(beside, file)
  syncFolder(dirname(file))
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
