import { chmodSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { keepPasswordFile, passwordFile, readPasswordFile } from '../../../electron/shop/index.ts'

function file(): string {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-password-'))
  onTestFinished(() => rmSync(folder, { recursive: true }))
  return passwordFile(folder)
}

describe('the file with the password of the archive', () => {
  it('is for this user alone, also where a crash left one beside it that is not', () => {
    const path = file()
    writeFileSync(`${path}.new`, 'half', { mode: 0o644 })
    keepPasswordFile(path, 'tea at four ')
    expect(statSync(path).mode & 0o777).toBe(0o600)
    expect(readPasswordFile(path)).toEqual({ ok: true, value: 'tea at four ' })
  })

  it('is not there at first', () => {
    expect(readPasswordFile(file())).toEqual({ ok: true, value: null })
  })

  it.skipIf(process.platform === 'win32').each([0o640, 0o604, 0o620, 0o666])(
    'is refused with rights %o, and its password is not in what is said',
    (mode) => {
      const path = file()
      keepPasswordFile(path, 'tea at four')
      chmodSync(path, mode)
      const read = readPasswordFile(path)
      expect(read).toMatchObject({
        ok: false,
        problem: { code: 'shop-password-file', facts: { fault: 'open' } },
      })
      expect(JSON.stringify(read)).not.toContain('tea')
    },
  )
})
