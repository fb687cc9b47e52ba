import { describe, expect, it } from 'vitest'
import { lengthOf, millimetres, readThread, unifiedName } from '../../../core/quantity/index.ts'

const metric = (diameter: number, pitch: number) => ({
  ok: true,
  value: { diameter: millimetres(diameter), pitch: millimetres(pitch), system: 'metric' },
})

describe('a thread by its designation', () => {
  it.each(['M10×1.25', 'M10x1.25', 'm10 x 1,25', ' M 10 × 1.25 '])(
    '%j is 10 mm with a pitch of 1.25 mm',
    (typed) => {
      expect(readThread(typed)).toEqual(metric(10, 1.25))
    },
  )

  it('without a pitch has the coarse one', () => {
    expect(readThread('M10')).toEqual(metric(10, 1.5))
  })

  it.each([
    ['3/8-16 UNC', 0.375, 16],
    ['3/8 - 16 unc', 0.375, 16],
    ['1 1/8-12 UNF', 1.125, 12],
    ['1-1/8-12 UNF', 1.125, 12],
    ['1-8 UNC', 1, 8],
    ['#10-32 UNF', 0.19, 32],
  ])('%s is %d in with %d threads to the inch', (typed, inches, perInch) => {
    expect(readThread(typed)).toEqual({
      ok: true,
      value: { diameter: lengthOf(inches, 'in'), pitch: lengthOf(1 / perInch, 'in'), system: 'unified' },
    })
  })

  it.each([
    '',
    'M',
    'M0',
    'M9',
    'M10×0',
    'M10×',
    '3/8',
    '3/8-16',
    '3/8-24 UNC',
    '3/8-16 UNF',
    '11/32-16 UNC',
    'G 1/4',
    '#7-20 UNC',
  ])('%j is refused', (typed) => {
    expect(readThread(typed)).toMatchObject({ ok: false, problem: { code: 'thread-designation-unknown' } })
  })

  it('is named again from its sizes', () => {
    expect(unifiedName(lengthOf(0.375, 'in'), lengthOf(1 / 24, 'in'))).toBe('3/8-24 UNF')
    expect(unifiedName(lengthOf(0.19, 'in'), lengthOf(1 / 24, 'in'))).toBe('#10-24 UNC')
    expect(unifiedName(lengthOf(0.375, 'in'), lengthOf(1 / 20, 'in'))).toBeNull()
  })
})
