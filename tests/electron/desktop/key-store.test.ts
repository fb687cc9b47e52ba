import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished, vi } from 'vitest'

/**
 * Laws of Electron’s: shell/browser/api/electron_api_safe_storage.cc. What was sealed begins with v10 or v11, and anything else is
 * refused; both calls throw where nothing can be sealed.
 */
const played = vi.hoisted(() => {
  const ring = { backend: 'gnome_libsecret', isOpen: true, key: 7 }
  const turned = (bytes: Uint8Array) => Buffer.from(bytes.map((byte) => byte ^ ring.key))
  const refuse = () => {
    if (!ring.isOpen) throw new Error('Encryption is not available.')
  }
  return {
    ring,
    safeStorage: {
      isEncryptionAvailable: () => ring.isOpen,
      getSelectedStorageBackend: () => ring.backend,
      encryptString(text: string) {
        refuse()
        return Buffer.concat([Buffer.from('v11'), turned(Buffer.from(text))])
      },
      decryptString(bytes: Buffer) {
        refuse()
        if (bytes.length === 0) return ''
        const text = turned(bytes.subarray(3)).toString()
        if (!bytes.toString('latin1').startsWith('v11') || text.includes('\0'))
          throw new Error('Error while decrypting the ciphertext provided to safeStorage.decryptString.')
        return text
      },
    },
  }
})
vi.mock('electron', () => ({ safeStorage: played.safeStorage }))
const { platformKeyStore } = await import('../../../electron/desktop/key-store.ts')
const { passwordKeeper } = await import('../../../electron/shop/index.ts')

const password = 'tea-at-four'

function inFolder(env: Readonly<Record<string, string>> = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-keys-'))
  onTestFinished(() => {
    rmSync(folder, { recursive: true })
    Object.assign(played.ring, { backend: 'gnome_libsecret', isOpen: true, key: 7 })
  })
  return { folder, keeper: passwordKeeper(folder, env, platformKeyStore) }
}

describe('the password of the archive', () => {
  it('is sealed by the key ring of the platform, and stands in no file', () => {
    const { folder, keeper } = inFolder()
    expect(keeper.place()).toBe('key-store')
    keeper.keep(password)
    expect(keeper.read()).toEqual({ ok: true, value: password })
    expect(readdirSync(folder)).toEqual(['shop-password.sealed'])
    expect(readFileSync(join(folder, 'shop-password.sealed'), 'latin1')).not.toContain(password)
    keeper.forget()
    expect(readdirSync(folder)).toEqual([])
    expect(keeper.read()).toEqual({ ok: true, value: null })
  })

  it.each([
    ['there is no key ring', { isOpen: false }],
    ['the key is one that any program knows', { backend: 'basic_text' }],
  ])('lies in a file for this user alone where %s', (_, ring) => {
    const { folder, keeper } = inFolder()
    Object.assign(played.ring, ring)
    expect(keeper.place()).toBe('file')
    keeper.keep(password)
    expect(readdirSync(folder)).toEqual(['shop-password'])
    expect(statSync(join(folder, 'shop-password')).mode & 0o777).toBe(0o600)
    expect(keeper.read()).toEqual({ ok: true, value: password })
  })

  it('is asked for again where the key ring was lost, or the file was cut off', () => {
    const { folder, keeper } = inFolder()
    keeper.keep(password)
    played.ring.key = password.charCodeAt(0) ^ 7
    expect(keeper.read()).toEqual({ ok: true, value: null })
    writeFileSync(join(folder, 'shop-password.sealed'), '')
    expect(keeper.read()).toEqual({ ok: true, value: null })
  })

  it('leaves its file once the key ring is there', () => {
    const { folder, keeper } = inFolder()
    played.ring.isOpen = false
    keeper.keep(password)
    played.ring.isOpen = true
    keeper.keep(password)
    expect(readdirSync(folder)).toEqual(['shop-password.sealed'])
  })

  it('in the environment goes before both', () => {
    const { keeper } = inFolder({ PGPASSWORD: 'another' })
    keeper.keep(password)
    expect(keeper.read()).toEqual({ ok: true, value: 'another' })
    expect(keeper.place()).toBe('environment')
  })
})
