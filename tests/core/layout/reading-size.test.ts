import { describe, expect, it } from 'vitest'
import {
  heightSeenAt,
  numberCapital,
  readingFontSize,
  usualPxPerMm,
  type ReadingDistance,
} from '../../../core/layout/index.ts'

/** A sheet of this width in a window of 1366, of 1920 and of 2560. */
const [small, large, wide] = [960, 1380, 2000] as const
const at = (distance: ReadingDistance, pxPerMm = usualPxPerMm) => ({ distance, pxPerMm })

describe('the height that an eye sees as 20 arc minutes', () => {
  // 2 · d · tan(10′), tan(10′) = 0.002909: the heights that follow from the 20 to 22 arc minutes of ISO 9241-303.
  it.each([
    [0.5, 2.91],
    [1, 5.82],
    [2, 11.64],
  ])('from %s m is %s mm', (distance, mm) => {
    expect(heightSeenAt(20, distance)).toBeCloseTo(mm, 2)
  })
})

describe('capitals of the numbers on the drawing', () => {
  it('grow with the sheet from ½ m, from 12 to 20 px', () => {
    expect(numberCapital(at(0.5), 400)).toBe(12)
    expect(numberCapital(at(0.5), small)).toBe(13) // 960 / 75 = 12.8
    expect(numberCapital(at(0.5), large)).toBe(19) // 1380 / 75 = 18.4
    expect(numberCapital(at(0.5), wide)).toBe(20)
  })

  it('are 16 to 20 arc minutes from 1 m: 4.65 to 5.82 mm', () => {
    expect(numberCapital(at(1), 400)).toBe(18) // 4.65 mm · 3.78 px/mm = 17.6 px
    expect(numberCapital(at(1), small)).toBe(20) // 960 / 50 = 19.2
    expect(numberCapital(at(1), large)).toBe(22) // 5.82 mm · 3.78 px/mm = 22.0 px
  })

  it('are 20 arc minutes from 2 m on every sheet: 11.64 mm are 44 px', () => {
    for (const width of [400, small, large, wide]) expect(numberCapital(at(2), width)).toBe(44)
  })

  it('have more pixels on a finer screen, so that they are as high in millimetres', () => {
    expect(numberCapital(at(2, 6.4), small)).toBe(75) // 11.64 mm · 6.4 px/mm = 74.5 px
    expect(numberCapital(at(0.5, 6.4), 400)).toBe(20) // 21 arc minutes: 3.05 mm · 6.4 px/mm = 19.5 px
  })
})

describe('the type of what is next', () => {
  it('has capitals of 20 arc minutes: they are 0.672 of its size', () => {
    expect(readingFontSize(at(0.5)) * 0.672).toBeGreaterThanOrEqual(10.99)
    expect(readingFontSize(at(1)) * 0.672).toBeGreaterThanOrEqual(21.99)
    expect(readingFontSize(at(2)) * 0.672).toBeGreaterThanOrEqual(43.98)
    expect(readingFontSize(at(2))).toBe(66)
  })
})
