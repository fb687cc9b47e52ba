import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { measureOrder, orderBy, type PatternName, type Place } from '../../../../core/tightening/index.ts'
import { circle, grid, shuffled } from '../bolt-places.ts'
import { checkProperty } from '../../../property.ts'

const names: readonly PatternName[] = ['centre-out', 'spiral', 'crosswise', 'end-to-end']

describe('any pattern', () => {
  const places = fc
    .array(fc.record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -200, max: 200 }) }), {
      maxLength: 40,
    })
    .map((found) => found.map((place, index): Place => ({ id: `bolt-${index}`, ...place })))

  it.each(names)('%s has every fastener once, whatever order they come in', (name) => {
    checkProperty(
      fc.property(places, (some) => {
        const order = orderBy(name, some)
        expect(order.toSorted()).toEqual(some.map(({ id }) => id).toSorted())
        expect(orderBy(name, some.toReversed())).toEqual(order)
        expect(orderBy(name, shuffled(some))).toEqual(order)
      }),
    )
  })

  it.each(names)('%s is the same wherever the engine stands', (name) => {
    const here = grid(5, [46, -46])
    const there = here.map(({ id, x, y }) => ({ id, x: x + 1000, y: y - 300 }))
    expect(orderBy(name, there)).toEqual(orderBy(name, here))
  })

  it.each(names)('%s of nothing is nothing, and of one is that one', (name) => {
    expect(orderBy(name, [])).toEqual([])
    expect(orderBy(name, [{ id: 'lone', x: 3, y: 4 }])).toEqual(['lone'])
  })
})

// Two rows of five: a1 to a5 above, b1 to b5 below, 1 at the nose.
const caps = grid(5, [46, -46])

describe('centre-out', () => {
  it('goes from the middle cap outwards, from one side to the other', () => {
    expect(orderBy('centre-out', caps)).toEqual(['a3', 'b3', 'a2', 'b4', 'b2', 'a4', 'b1', 'a5', 'a1', 'b5'])
  })

  it('goes from side to side in one row', () => {
    expect(orderBy('centre-out', grid(7, [0]))).toEqual(['a4', 'a3', 'a5', 'a2', 'a6', 'a1', 'a7'])
  })

  it('begins with the four in the middle of an even number of columns', () => {
    const order = orderBy('centre-out', grid(4, [46, -46]))
    expect(order.slice(0, 4).toSorted()).toEqual(['a2', 'a3', 'b2', 'b3'])
  })

  it.each([
    ['one row', [0]],
    ['two rows', [40, -40]],
  ])(
    'has in %s, at every pull, as many done towards the nose as towards the drive end, give or take one',
    (_, rows) => {
      for (const columns of [2, 3, 4, 5, 6, 7, 8, 9]) {
        const order = inOrder('centre-out', grid(columns, rows))
        expect(measureOrder(order).inwards ?? 0).toBe(0)
        let balance = 0
        for (const { x } of order) {
          balance += Math.sign(x - (columns - 1) * 50)
          expect(Math.abs(balance)).toBeLessThanOrEqual(1)
        }
      }
    },
  )

  it('follows the longer extent, also where that is across the crank', () => {
    const upright = grid(5, [46, -46]).map(({ id, x, y }) => ({ id, x: y, y: x }))
    expect(orderBy('centre-out', upright).slice(0, 2).toSorted()).toEqual(['a3', 'b3'])
  })
})

describe('spiral', () => {
  it('goes round the middle in a widening ring, clockwise', () => {
    expect(orderBy('spiral', caps)).toEqual(['a3', 'b3', 'b2', 'a2', 'a4', 'b4', 'b1', 'a1', 'a5', 'b5'])
  })

  it('goes on in the direction it stands in, where the next rank has one there', () => {
    // The last of the second rank is towards the nose; so is the first of the third.
    expect(orderBy('spiral', grid(5, [0]))).toEqual(['a3', 'a4', 'a2', 'a1', 'a5'])
  })

  it('is strictly outwards', () => {
    for (const columns of [3, 4, 5, 8])
      expect(measureOrder(inOrder('spiral', grid(columns, [40, -40]))).inwards).toBe(0)
  })
})

describe('crosswise', () => {
  it('goes across and then half way between, as a wheel of eight is pulled', () => {
    expect(orderBy('crosswise', circle(8))).toEqual(['1', '5', '3', '7', '2', '6', '4', '8'])
  })

  it.each([
    [4, '1 3 2 4'],
    [5, '1 3 5 2 4'],
    [6, '1 4 2 5 3 6'],
  ])('of %d is %s', (count, order) => {
    expect(orderBy('crosswise', circle(count)).join(' ')).toBe(order)
  })

  it.each([10, 12, 16, 18, 20, 22, 24, 28, 36])(
    'of %d takes its second pair a quarter turn from the first, as near as the count allows',
    (count) => {
      const [first, , second] = orderBy('crosswise', circle(count)).map(Number)
      const turn = ((second! - first!) * 360) / count
      const offQuarter = Math.min(Math.abs(turn - 90), Math.abs(turn - 270))
      expect(offQuarter).toBeLessThan(180 / count + 1e-9)
    },
  )

  // ASME PCC-1, the table for the legacy pattern: remembered, not seen in print. Its pairs, each named by its lower end; which
  // end of a pair comes first is ours, the end further from the last one pulled. The alternative pattern of that standard has
  // other orders and is not one of these.
  it.each([
    [8, [1, 3, 2, 4]],
    [12, [1, 4, 2, 5, 3, 6]],
    [16, [1, 5, 3, 7, 2, 6, 4, 8]],
  ])('of %d has the pairs of the legacy pattern', (count, pairs) => {
    const order = orderBy('crosswise', circle(count)).map(Number)
    const half = count / 2
    expect(pairs.map((_, pair) => Math.min(order[2 * pair]!, order[2 * pair + 1]!))).toEqual(pairs)
    expect(pairs.every((_, pair) => Math.abs(order[2 * pair]! - order[2 * pair + 1]!) === half)).toBe(true)
  })

  it('begins each pair at the end that is further from the last one pulled', () => {
    const apart = (a: number, b: number, count: number) =>
      Math.min((a - b + count) % count, (b - a + count) % count)
    for (const count of [6, 8, 10, 12, 16, 18, 20, 24, 36]) {
      const order = orderBy('crosswise', circle(count)).map(Number)
      for (let at = 2; at < count; at += 2) {
        const [before, first, second] = order.slice(at - 1, at + 2) as [number, number, number]
        expect(apart(first, before, count), `${count}`).toBeGreaterThanOrEqual(apart(second, before, count))
      }
    }
  })

  it('never goes to a neighbour on a circle of four and more, except where only neighbours are left', () => {
    for (let count = 5; count <= 24; count += 1) {
      const order = orderBy('crosswise', circle(count)).map(Number)
      order.slice(1).forEach((position, index) => {
        const apart = Math.abs(position - order[index]!)
        expect(Math.min(apart, count - apart)).toBeGreaterThan(1)
      })
    }
  })
})

describe('places that are alike', () => {
  it('come nose first and the upper one first, whatever they are called', () => {
    const row = ['e', 'd', 'c', 'b', 'a'].map((id, index) => ({ id, x: 100 * index, y: 0 }))
    expect(orderBy('centre-out', row)).toEqual(['c', 'd', 'b', 'e', 'a'])
    const pair = [
      { id: 'a', x: 0, y: -46 },
      { id: 'z', x: 0, y: 46 },
    ]
    expect(orderBy('centre-out', pair)).toEqual(['z', 'a'])
  })

  it('lie along the crank where they are as long as wide', () => {
    const square = grid(2, [50, -50])
    expect(orderBy('end-to-end', square)).toEqual(['a1', 'b1', 'a2', 'b2'])
  })

  it('have the same side first in each column where they stand upright as well', () => {
    const upright = grid(3, [46, -46]).map(({ id, x, y }) => ({ id, x: y, y: x }))
    expect(orderBy('end-to-end', upright)).toEqual(['a1', 'b1', 'a2', 'b2', 'a3', 'b3'])
  })
})

describe('end to end', () => {
  it('goes from the nose to the drive end, the same side first in each column', () => {
    expect(orderBy('end-to-end', grid(3, [46, -46]))).toEqual(['a1', 'b1', 'a2', 'b2', 'a3', 'b3'])
  })
})

function inOrder(name: PatternName, places: readonly Place[]): readonly Place[] {
  return orderBy(name, places).map((id) => places.find((place) => place.id === id)!)
}

describe('a spiral', () => {
  it('goes round once in each rank, clockwise, from where the last one ended', () => {
    // Four columns in two rows about (150, 0). The four in the middle lie at 47°, 133°, 227° and 313° from the top; on from 313°
    // come the corners at 73°, 107°, 253° and 287°.
    expect(orderBy('spiral', grid(4, [46, -46]))).toEqual(['a3', 'b3', 'b2', 'a2', 'a4', 'b4', 'b1', 'a1'])
  })
})
