import { describe, expect, it } from 'vitest'
import { measuredKinds } from '../../../core/engine/index.ts'
import { measurePicture, type PictureLine } from '../../../core/layout/index.ts'

type Point = readonly [x: number, y: number]

function pointsOf({ points, closed }: PictureLine): readonly Point[] {
  const all = Array.from({ length: points.length / 2 }, (_, at): Point => [
    points[2 * at]!,
    points[2 * at + 1]!,
  ])
  return closed ? [...all, all[0]!] : all
}

/** How far a point is from the nearest place of a line, in units of the picture. */
function distance([x, y]: Point, line: PictureLine): number {
  const points = pointsOf(line)
  return Math.min(
    ...points.slice(1).map(([bx, by], at) => {
      const [ax, ay] = points[at]!
      const length2 = (bx - ax) ** 2 + (by - ay) ** 2
      const along = length2 === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2
      const share = Math.min(1, Math.max(0, along))
      return Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay))
    }),
  )
}

describe('the picture of a measurement', () => {
  it.each(measuredKinds)('of %s lies on its sheet', (what) => {
    const { width, height, lines } = measurePicture(what)
    for (const [x, y] of lines.flatMap(pointsOf)) {
      expect(x).toBeGreaterThanOrEqual(0)
      expect(x).toBeLessThanOrEqual(width)
      expect(y).toBeGreaterThanOrEqual(0)
      expect(y).toBeLessThanOrEqual(height)
    }
  })

  it.each(measuredKinds)('of %s has one arrow, whose head is at the part', (what) => {
    const { lines } = measurePicture(what)
    const [shaft, head, ...more] = lines.filter(({ role }) => role === 'gauge')
    expect(more).toEqual([])
    const tip = pointsOf(shaft!).at(-1)!
    expect(pointsOf(head!)[1]).toEqual(tip)
    const metal = lines.filter(({ role }) => role === 'metal')
    expect(Math.min(...metal.map((line) => distance(tip, line)))).toBeLessThanOrEqual(6)
  })

  it('is another for each thing that is measured', () => {
    const drawn = measuredKinds.map((what) => JSON.stringify(measurePicture(what)))
    expect(new Set(drawn).size).toBe(measuredKinds.length)
  })
})
