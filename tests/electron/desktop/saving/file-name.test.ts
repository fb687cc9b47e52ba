import { describe, expect, it } from 'vitest'
import { plainFileName } from '../../../../electron/desktop/saving/file-name.ts'

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

  it.each(['CON', 'nul', 'Com1', 'LPT\u00b9', 'aux.txt', 'PRN .pdf', 'CONIN$', 'con.', 'NUL '])(
    'is no device of Windows: %s',
    (typed) => {
      expect(plainFileName(typed)).toBe(`file ${typed.replace(/[. ]+$/, '')}`)
    },
  )

  it.each(['CONRAD', 'COM port', 'nullify', 'LPT', 'Auxiliary 3'])(
    'keeps a name that only begins like one: %s',
    (typed) => {
      expect(plainFileName(typed)).toBe(typed)
    },
  )

  it.each(['Ferry.', 'Ferry ', 'Ferry. . '])(
    'ends in no dot or blank, which Windows leaves out: “%s”',
    (typed) => {
      expect(plainFileName(typed)).toBe('Ferry')
    },
  )

  it('is not too long for any disk, and ends in no half character', () => {
    expect(plainFileName('a'.repeat(500))).toHaveLength(120)
    expect(plainFileName('⚙️'.repeat(200)).isWellFormed()).toBe(true)
    expect(plainFileName(`${'a'.repeat(119)}\u{1F529}`).isWellFormed()).toBe(true)
    expect(plainFileName('a\ud83d')).toBe('a')
  })
})
