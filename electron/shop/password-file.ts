import { closeSync, fstatSync, openSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { done, refused, type Outcome } from '../../core/problem/index.ts'
import { codeOf, writeWhole } from '../store/index.ts'

const name = 'shop-password'

/** Where the password of the archive lies, beside the record. */
export function passwordFile(dataFolder: string): string {
  return join(dataFolder, name)
}

/**
 * The password that was kept; null where none was. Refused where others may read the file, as SSH refuses a key and libpq its
 * password file: what others may have read is no secret any more. Windows has no such bits; there the folder’s rights count.
 */
export function readPasswordFile(file: string): Outcome<string | null> {
  let open: number
  try {
    open = openSync(file, 'r')
  } catch (error) {
    return codeOf(error) === 'ENOENT'
      ? done(null)
      : refused('shop-password-file', { file, fault: 'unreadable' })
  }
  try {
    // Asked of the opened file, not of the name: it may be another one by then.
    if (process.platform !== 'win32' && (fstatSync(open).mode & 0o077) !== 0)
      return refused('shop-password-file', { file, fault: 'open' })
    return done(readFileSync(open, 'utf8').replace(/\r?\n$/, ''))
  } catch {
    return refused('shop-password-file', { file, fault: 'unreadable' })
  } finally {
    closeSync(open)
  }
}

/** Keeps it for this user alone, all or nothing. Throws where the folder cannot be written. */
export function keepPasswordFile(file: string, password: string): void {
  rmSync(`${file}.new`, { force: true }) // one that a crash left may have other rights
  writeWhole(file, `${password}\n`)
}

/** Twice does no harm. */
export function forgetPasswordFile(file: string): void {
  rmSync(file, { force: true })
}
