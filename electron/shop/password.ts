import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { done, refused, type Outcome } from '../../core/problem/index.ts'
import { codeOf } from '../store/index.ts'
import { forgetPasswordFile, keepPasswordFile, passwordFile, readPasswordFile } from './password-file.ts'

/** What the platform keeps secrets with, such as a key ring. Only the desktop host has one. */
export interface KeyStore {
  /** Whether it can be used now, and its keys are the platform’s and not ones that any program knows. May wait for a person. */
  isOpen(): boolean
  /** Both throw where it cannot. */
  seal(text: string): Uint8Array
  unseal(bytes: Uint8Array): string
}

/** Where the password of the archive is kept on this machine. */
export interface PasswordKeeper {
  /** Null where none is. */
  read(): Outcome<string | null>
  /** Throws where the folder cannot be written. */
  keep(password: string): void
  /** Twice does no harm. */
  forget(): void
  /** Where it is kept, or would be now. */
  place(): 'key-store' | 'file' | 'environment'
}

/**
 * The environment comes first, as with PostgreSQL’s own programs; then what the key store sealed; then a file that this user alone
 * may read. What the key store will no longer unseal counts as not kept: it is typed again.
 */
export function passwordKeeper(
  dataFolder: string,
  env: Readonly<Record<string, string | undefined>>,
  keyStore: KeyStore | null,
): PasswordKeeper {
  const plain = passwordFile(dataFolder)
  const sealed = `${plain}.sealed`

  /** Null where nothing is sealed. */
  function readSealed(): Outcome<string | null> {
    let bytes: Uint8Array
    try {
      bytes = readFileSync(sealed)
    } catch (error) {
      return codeOf(error) === 'ENOENT'
        ? done(null)
        : refused('shop-password-file', { file: sealed, fault: 'unreadable' })
    }
    try {
      // Nothing is unsealed to nothing: a file that was cut off is none.
      return done(keyStore?.isOpen() === true && bytes.length > 0 ? keyStore.unseal(bytes) : null)
    } catch {
      return done(null)
    }
  }

  const given = env['PGPASSWORD'] ?? ''

  return {
    read() {
      if (given !== '') return done(given)
      const unsealed = readSealed()
      return !unsealed.ok || unsealed.value !== null ? unsealed : readPasswordFile(plain)
    },
    keep(password) {
      if (keyStore?.isOpen() !== true) return keepPasswordFile(plain, password)
      writeFileSync(sealed, keyStore.seal(password), { mode: 0o600, flush: true })
      forgetPasswordFile(plain)
    },
    place() {
      if (given !== '') return 'environment'
      if (existsSync(sealed)) return 'key-store'
      // The key store is asked for last: it may ask the person.
      return !existsSync(plain) && keyStore?.isOpen() === true ? 'key-store' : 'file'
    },
    forget() {
      rmSync(sealed, { force: true })
      forgetPasswordFile(plain)
    },
  }
}
