import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  crossesItself,
  distanceToBox,
  distanceToSegment,
  insidePolygon,
  segmentsMeet,
  type Box,
  type Point,
} from '../../../core/audit/plane.ts'
import { millimetres } from '../../../core/quantity/index.ts'

const mm = 1_000_000
const at = (x: number, y: number): Point => [x * mm, y * mm]
const box = (x: number, y: number, width: number, height: number): Box => ({
  at: [millimetres(x), millimetres(y)],
  size: [millimetres(width), millimetres(height)],
})

describe('the distance from a hole to a bead', () => {
  it('is square to the bead beside it, and to its end beyond it', () => {
    expect(distanceToSegment(at(5, 3), [at(0, 0), at(10, 0)])).toBe(3 * mm)
    expect(distanceToSegment(at(13, 4), [at(0, 0), at(10, 0)])).toBe(5 * mm)
  })

  it('is that to the point where two points of the bead are one', () => {
    expect(distanceToSegment(at(3, 4), [at(0, 0), at(0, 0)])).toBe(5 * mm)
  })
})

describe('the distance from a bead to a keep-out zone', () => {
  const zone = box(0, 0, 10, 6)

  it('is nothing through it, inside it and along its edge', () => {
    expect(distanceToBox([at(-20, 1), at(20, 1)], zone)).toBe(0)
    expect(distanceToBox([at(-1, 0), at(1, 0)], zone)).toBe(0)
    expect(distanceToBox([at(-20, 3), at(20, 3)], zone)).toBe(0)
  })

  it('is counted to the nearest corner past the corners', () => {
    expect(distanceToBox([at(8, 7), at(8, 20)], zone)).toBe(5 * mm)
    expect(distanceToBox([at(-20, 8), at(20, 8)], zone)).toBe(5 * mm)
  })

  it('is the same from either end of the bead', () => {
    const point = fc.tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: -40, max: 40 }))
    fc.assert(
      fc.property(point, point, (a, b) => {
        expect(distanceToBox([at(...a), at(...b)], zone)).toBeCloseTo(
          distanceToBox([at(...b), at(...a)], zone),
          3,
        )
      }),
    )
  })
})

describe('two stretches of a bead', () => {
  it('meet where they cross, where they touch, and where one lies on the other', () => {
    expect(segmentsMeet([at(0, 0), at(10, 10)], [at(0, 10), at(10, 0)])).toBe(true)
    expect(segmentsMeet([at(0, 0), at(10, 0)], [at(5, 0), at(5, 10)])).toBe(true)
    expect(segmentsMeet([at(0, 0), at(10, 0)], [at(4, 0), at(20, 0)])).toBe(true)
  })

  it('do not meet side by side or one behind the other', () => {
    expect(segmentsMeet([at(0, 0), at(10, 0)], [at(0, 1), at(10, 1)])).toBe(false)
    expect(segmentsMeet([at(0, 0), at(10, 0)], [at(11, 0), at(20, 0)])).toBe(false)
  })
})

describe('an outline', () => {
  const notched = [at(0, 0), at(10, 0), at(10, 10), at(5, 4), at(0, 10)]

  it('holds what is inside it and on its edge, not what lies in its notch', () => {
    expect(insidePolygon(notched, at(2, 2))).toBe(true)
    expect(insidePolygon(notched, at(10, 5))).toBe(true)
    expect(insidePolygon(notched, at(5, 8))).toBe(false)
    expect(insidePolygon(notched, at(11, 5))).toBe(false)
  })

  it('crosses itself when two corners are swapped', () => {
    expect(crossesItself(notched)).toBe(false)
    expect(crossesItself([at(0, 0), at(10, 10), at(10, 0), at(0, 10)])).toBe(true)
  })
})
