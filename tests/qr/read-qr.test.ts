import fc from 'fast-check'
import { encode } from 'uqr'
import { describe, expect, it } from 'vitest'
import { isFaultless, readQr, textOf } from './read-qr.ts'
import { checkProperty } from '../property.ts'

const written = (text: string, more: Parameters<typeof encode>[1] = {}) =>
  encode(text, { ecc: 'M', border: 0, ...more }).data

describe('the reader of QR codes that other tests read with', () => {
  it('reads the example of ISO/IEC 18004, annex I: 01234567 as version 1-M (remembered)', () => {
    const data = [
      0x10, 0x20, 0x0c, 0x56, 0x61, 0x80, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11,
    ]
    const correction = [0xa5, 0x24, 0xd4, 0xc1, 0xed, 0x36, 0xc7, 0x87, 0x2c, 0x55]
    expect(textOf(data)).toBe('01234567')
    expect(isFaultless([...data, ...correction], 10)).toBe(true)
    expect(isFaultless([...data, ...correction.with(9, 0x54)], 10)).toBe(false)
  })

  it('reads what uqr writes, of every kind of text, level and mask', () => {
    const texts = fc.oneof(
      fc.stringMatching(/^[0-9]{1,60}$/),
      fc.stringMatching(/^[0-9A-Z $%*+./:-]{1,60}$/),
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }),
    )
    const levels = fc.constantFrom('L', 'M', 'Q', 'H')
    checkProperty(
      fc.property(texts, levels, fc.integer({ min: 0, max: 7 }), (text, ecc, maskPattern) => {
        fc.pre(new TextEncoder().encode(text).length < 55)
        expect(readQr(written(text, { ecc, maskPattern }))).toBe(text)
      }),
    )
  })

  it('refuses a symbol with one wrong module, wherever it is', () => {
    const modules = written('BEDPLATE 2026-001 M1 UPPER')
    const size = modules.length
    // Not all around: separators, timing, the alignment square, the format's second copy and what is left over at the
    // end of the symbol say nothing that is read.
    for (let row = 9; row < size - 8; row++)
      for (let column = 9; column < size - 9; column++) {
        const wrong = modules.map((line, at) => (at === row ? line.with(column, !line[column]!) : line))
        expect(() => readQr(wrong), `${row}, ${column}`).toThrow()
      }
  })
})
