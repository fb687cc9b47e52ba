import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  crossesItself,
  distanceToSegment,
  gapToBox,
  insidePolygon,
  segmentsMeet,
  type Box,
  type Point,
} from '../../../core/plane/index.ts'
import { checkProperty } from '../../property.ts'

const at = (x: number, y: number): Point => ({ x, y })

describe('the distance from a hole to a bead', () => {
  it('is square to the bead beside it, and to its end beyond it', () => {
    expect(distanceToSegment(at(5, 3), at(0, 0), at(10, 0))).toBe(3)
    expect(distanceToSegment(at(13, 4), at(0, 0), at(10, 0))).toBe(5)
  })

  it('is that to the point where two points of the bead are one', () => {
    expect(distanceToSegment(at(3, 4), at(0, 0), at(0, 0))).toBe(5)
  })
})

describe('the distance from a bead to a keep-out zone', () => {
  const zone: Box = { left: -5, top: -3, width: 10, height: 6 }

  it('is nothing through it, inside it and along its edge', () => {
    expect(gapToBox(zone, at(-20, 1), at(20, 1))).toBe(0)
    expect(gapToBox(zone, at(-1, 0), at(1, 0))).toBe(0)
    expect(gapToBox(zone, at(-20, 3), at(20, 3))).toBe(0)
  })

  it('is counted to the nearest corner past the corners', () => {
    expect(gapToBox(zone, at(8, 7), at(8, 20))).toBe(5)
    expect(gapToBox(zone, at(-20, 8), at(20, 8))).toBe(5)
  })

  it('is the same from either end of the bead', () => {
    const point = fc.tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: -40, max: 40 }))
    checkProperty(
      fc.property(point, point, (a, b) => {
        expect(gapToBox(zone, at(...a), at(...b))).toBeCloseTo(gapToBox(zone, at(...b), at(...a)), 9)
      }),
    )
  })
})

describe('two stretches of a bead', () => {
  it('meet where they cross, where they touch, and where one lies on the other', () => {
    expect(segmentsMeet(at(0, 0), at(10, 10), at(0, 10), at(10, 0))).toBe(true)
    expect(segmentsMeet(at(0, 0), at(10, 0), at(5, 0), at(5, 10))).toBe(true)
    expect(segmentsMeet(at(0, 0), at(10, 0), at(4, 0), at(20, 0))).toBe(true)
  })

  it('do not meet side by side or one behind the other', () => {
    expect(segmentsMeet(at(0, 0), at(10, 0), at(0, 1), at(10, 1))).toBe(false)
    expect(segmentsMeet(at(0, 0), at(10, 0), at(11, 0), at(20, 0))).toBe(false)
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
