import { describe, expect, it } from 'vitest'
import { bearingFace, hexBearingFace } from '../../../core/joint/index.ts'
import { millimetres } from '../../../core/quantity/index.ts'
import { face, valueOf, m8, thread, nutFactor } from './workshop.ts'

describe('a bearing face', () => {
  it('is larger than the hole in it', () => {
    expect(face(11.63, 9)).toEqual({ outer: 11_630_000, hole: 9_000_000 })
    expect(bearingFace(millimetres(9), millimetres(9)).ok).toBe(false)
    expect(bearingFace(millimetres(9), millimetres(11.63))).toMatchObject({
      problem: { code: 'bearing-face-out-of-range', facts: { outerMm: 9, holeMm: 11.63 } },
    })
    expect(bearingFace(millimetres(9), millimetres(0)).ok).toBe(false)
  })

  // Across flats of ISO 4014, least d_w of the same, medium hole of ISO 273.
  it.each([
    [6, 1, 10, 8.88, 6.6],
    [8, 1.25, 13, 11.63, 9],
    [10, 1.5, 16, 14.63, 11],
    [12, 1.75, 18, 16.63, 13.5],
    [14, 2, 21, 19.37, 15.5],
  ])(
    'M%d×%d: calculated from %d mm across flats it moves the torque by less than 3 %',
    (d, p, flats, dw, dh) => {
      const friction = { thread: 0.12, head: 0.12 }
      const calculated = valueOf(hexBearingFace(thread(d, p), millimetres(flats)))
      const exact = nutFactor({ thread: thread(d, p), bearing: face(dw, dh), friction })
      const near = nutFactor({ thread: thread(d, p), bearing: calculated, friction })
      expect(Math.abs(near / exact - 1)).toBeLessThan(0.03)
    },
  )

  it('cannot be calculated from a hexagon that is no wider than the thread', () => {
    expect(hexBearingFace(m8.thread, millimetres(8)).ok).toBe(false)
  })
})
