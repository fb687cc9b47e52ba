import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readSpec } from '../../../core/engine/index.ts'
import { gapAdvice } from '../../../renderer/steps/check/gap-advice.ts'

/** Limits 0.10 to 0.28 mm; standard washers 2.80 mm for these, oversize 2.90 mm for 0.30 to 0.48; nothing between. */
const read = readSpec(readFileSync('specs/tarn-4.json', 'utf8'))
if (!read.ok) throw new Error('tarn-4 cannot be read')
const tarn = read.spec
const oversize = tarn.endFloat!.washers[1]!
const asks = (typed: string) => gapAdvice(tarn, 'end-float', typed, null)

describe('a measured end float', () => {
  it('gives the washers of the table', () => {
    expect(asks('0.20')).toEqual({ known: 'Washers by the table: standard, 2.800 mm each', fault: null })
    expect(asks('0.40')!.known).toContain('oversize')
    expect(asks('0.40')!.fault).toContain('allowed 0.100 mm to 0.280 mm')
  })

  it('is not defined in a gap of the table', () => {
    expect(asks('0.29')!.known).toBe('Washers: not defined')
    expect(asks('0.29')!.fault).toContain('not defined')
  })

  it('is put right by the washers that it was measured with: two oversize ones take up 0.20', () => {
    expect(gapAdvice(tarn, 'end-float', '0.15', oversize)!.known).toContain('oversize')
  })

  it('is awaited while nothing that can be read is typed', () => {
    expect(asks('')).toBeNull()
    expect(asks('abc')).toBeNull()
  })
})

describe('a measured side clearance', () => {
  it('is held against its limits, 0.15 to 0.35 mm', () => {
    expect(gapAdvice(tarn, 'rod-side', '0.25', null)).toEqual({ known: null, fault: null })
    expect(gapAdvice(tarn, 'rod-side', '0.40', null)!.fault).toContain('0.400 mm')
  })
})
