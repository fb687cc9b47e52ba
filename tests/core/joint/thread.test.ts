import { describe, expect, it } from 'vitest'
import { formatThread, threadOf } from '../../../core/joint/index.ts'
import { lengthOf, millimetres } from '../../../core/quantity/index.ts'
import { thread } from './workshop.ts'
import { lineOf } from '../../problem-line.ts'

describe('a thread', () => {
  it('is named with its pitch', () => {
    expect(formatThread(thread(10, 1.5))).toBe('M10×1.5')
    expect(formatThread(thread(8, 1))).toBe('M8×1')
  })

  it('is deeper the coarser it is', () => {
    expect(thread(10, 1.5).stressAreaMm2).toBeLessThan(thread(10, 1.25).stressAreaMm2)
    expect(thread(10, 1.5).rootDiameter).toBeLessThan(thread(10, 1.5).pitchDiameter)
  })

  it('may have a pitch of a third of its diameter and no more', () => {
    expect(threadOf(millimetres(9), millimetres(3)).ok).toBe(true)
    expect(threadOf(millimetres(9), millimetres(3.001)).ok).toBe(false)
  })

  it.each([
    ['a pitch larger than the diameter', 1.25, 8, 'thread-pitch-out-of-range'],
    ['no pitch', 8, 0, 'thread-pitch-out-of-range'],
    ['a pitch below zero', 8, -1.25, 'thread-pitch-out-of-range'],
    ['no diameter', 0, 1, 'thread-diameter-out-of-range'],
    ['a diameter in the wrong unit', 8000, 1.25, 'thread-diameter-out-of-range'],
  ])('is refused with %s', (_, diameter, pitch, code) => {
    expect(threadOf(millimetres(diameter), millimetres(pitch))).toMatchObject({
      ok: false,
      problem: { code },
    })
  })

  it('is refused with both sizes', () => {
    const refused = threadOf(millimetres(8), lengthOf(20, 'mm'))
    if (refused.ok) throw new Error('a pitch of 20 mm on 8 mm was taken')
    expect(lineOf(refused.problem)).toMatch(/diameterMm=8\b.*pitchMm=20\b/)
  })

  // ISO 261: the finest pitches of M6, M10, M12, M33 and M100. Remembered; half of each leaves room for adjusting screws.
  it.each([
    [2, 0.25],
    [2.5, 0.35],
    [4, 0.5],
    [6, 0.75],
    [10, 0.75],
    [12, 1],
    [33, 1.5],
    [80, 2],
    [100, 2],
    [150, 3],
  ])('of M%d may be as fine as %d mm and half of that, and no finer', (diameter, finest) => {
    const made = (pitch: number) => threadOf(millimetres(diameter), millimetres(pitch)).ok
    expect(made(finest)).toBe(true)
    expect(made(finest / 2)).toBe(true)
    expect(made(finest / 2 - 0.001)).toBe(false)
  })

  it('is made from 1 to 300 mm, both included', () => {
    const made = (diameter: number, pitch: number) => threadOf(millimetres(diameter), millimetres(pitch)).ok
    expect([made(1, 0.25), made(300, 6)]).toEqual([true, true])
    expect([made(0.99, 0.25), made(300.1, 6)]).toEqual([false, false])
    expect([made(9, 3), made(9, 3.01)]).toEqual([true, false])
  })

  it('of M10 with a pitch of 0.1 mm is refused: a slip of the decimal point', () => {
    expect(threadOf(millimetres(10), millimetres(0.1))).toMatchObject({
      ok: false,
      problem: { code: 'thread-pitch-out-of-range' },
    })
  })
})
