import { describe, expect, it } from 'vitest'
import { plainFileName } from '../../../electron/desktop/file-name.ts'

describe('the name of a file to be saved', () => {
  it.each([
    ['2026-014 Ferry', '2026-014 Ferry'],
    ['../../etc/passwd', 'etc passwd'],
    ['C:\\Windows\\x', 'C Windows x'],
    ['a\u0000b\nc\u202Efdp', 'a b c fdp'],
    ['...', 'build sheet'],
    ['', 'build sheet'],
  ])('of “%s” is “%s”', (typed, plain) => {
    expect(plainFileName(typed)).toBe(plain)
  })

  it('is not too long for any disk', () => {
    expect(plainFileName('a'.repeat(500))).toHaveLength(120)
  })
})
