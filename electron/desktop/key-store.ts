import { safeStorage } from 'electron'
import type { KeyStore } from '../shop/index.ts'

/**
 * Electron’s way to the platform’s key ring. On Linux without one, it would seal with a password that stands in its sources
 * (shell/browser/api/electron_api_safe_storage.cc, IsEncryptionAvailable; docs/api/safe-storage.md, `basic_text`): that is none.
 */
export const platformKeyStore: KeyStore = {
  isOpen: () =>
    safeStorage.isEncryptionAvailable() &&
    (process.platform !== 'linux' || safeStorage.getSelectedStorageBackend() !== 'basic_text'),
  seal: (text) => safeStorage.encryptString(text),
  unseal: (bytes) => safeStorage.decryptString(Buffer.from(bytes)),
}
