import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { measureOrder, type Place } from '../../../../core/tightening/index.ts'
import { circle, grid } from '../bolt-places.ts'
import { checkProperty } from '../../../property.ts'
import { lineOf } from '../../../problem-line.ts'

function measure(places: readonly Place[], order: string) {
  const inOrder = order.split(' ').map((id) => places.find((place) => place.id === id)!)
  const { remarks, ...numbers } = measureOrder(inOrder)
  return { ...numbers, said: remarks.map(lineOf) }
}

const row = grid(7, [0])
const caps = grid(5, [46, -46])

describe('the measure of an order', () => {
  it('finds nothing unusual in one from the middle outwards', () => {
    expect(measure(row, 'a4 a3 a5 a2 a6 a1 a7')).toEqual({ inwards: 0, inLine: 1, said: [] })
    expect(measure(caps, 'a3 b3 b2 a4 b4 a2 a1 b5 b1 a5')).toEqual({ inwards: 0, inLine: 1, said: [] })
  })

  it('says when it begins outside, works inwards, and goes down one side', () => {
    // Of the 18 pairs at different distances in a row of seven, all have the outer one first.
    expect(measure(row, 'a1 a7 a2 a6 a3 a5 a4')).toEqual({
      inwards: 1,
      inLine: 1,
      said: ['order-begins-outside: first=a1, nearer=5', 'order-goes-inwards: percent=100'],
    })
    expect(measure(row, 'a1 a2 a3 a4 a5 a6 a7')).toEqual({
      inwards: 0.5,
      inLine: 6,
      said: ['order-begins-outside: first=a1, nearer=5', 'order-in-line: hops=6, first=a1, last=a7'],
    })
  })

  it('minds no order that begins in the nearest quarter, or is inwards three times of five', () => {
    // M is in the middle, N half way out, L and R at the ends: five pairs lie at different distances.
    const four = [
      { id: 'L', x: -100, y: 0 },
      { id: 'M', x: 0, y: 0 },
      { id: 'N', x: 50, y: 0 },
      { id: 'R', x: 100, y: 0 },
    ]
    // N before M, L before M: two of the five.
    expect(measure(four, 'N L M R')).toEqual({ inwards: 0.4, inLine: 1, said: [] })
    // N before M, and both ends before M but only one before N: three of the five.
    const threeOfFive = measure(four, 'L N M R')
    expect(threeOfFive.inwards).toBe(0.6)
    expect(threeOfFive.said.join()).not.toContain('order-goes-inwards')
  })

  it('does not mind two neighbours in a row', () => {
    expect(measure(caps, 'a3 b3 b2 b1 a4 a5 a2 b4 a1 b5').said).toEqual([])
  })

  it('counts neighbours side by side, not across: up one column and down the next is no line', () => {
    expect(measure(caps, 'a3 b3 b2 a2 a1 b1 b4 a4 a5 b5').inLine).toBe(1)
  })

  it('knows no middle on a circle, nor of three', () => {
    expect(measure(circle(8), '1 5 3 7 2 6 4 8')).toMatchObject({ inwards: null, said: [] })
    expect(measure(grid(3, [0]), 'a1 a2 a3')).toMatchObject({ inwards: null, said: [] })
  })

  it('finds a line down one side, and the first of two as long', () => {
    expect(measure(caps, 'a1 a2 a3 a4 a5 b5 b4 b3 b2 b1')).toMatchObject({ inLine: 4 })
    const twice = measure(caps, 'a1 a2 a3 a4 a5 b5 b4 b3 b2 b1').said.filter((remark) =>
      remark.startsWith('order-in-line'),
    )
    expect(twice).toEqual([expect.stringContaining('order-in-line: hops=4, first=a1, last=a5')])
  })

  it('takes a ring for a circle that is a tenth out of round, and no more', () => {
    const ring = (share: number) =>
      circle(8).map((place, index) =>
        index % 2 === 0 ? place : { ...place, x: share * place.x, y: share * place.y },
      )
    expect(measure(ring(0.92), '1 5 3 7 2 6 4 8').inwards).toBeNull()
    expect(measure(ring(0.88), '1 5 3 7 2 6 4 8').inwards).not.toBeNull()
  })

  it('takes bolts that stand a little out of their row for one rank: up to half of an even share', () => {
    // Six bolts over 200 mm: an even share is 33.3 mm. b2 stands 14 mm from the middle, where a2 is, b1 and b3 86 mm.
    const staggered = [
      ...grid(3, [46]),
      { id: 'b1', x: 14, y: -46 },
      { id: 'b2', x: 114, y: -46 },
      { id: 'b3', x: 186, y: -46 },
    ]
    expect(measure(staggered, 'b2 a2 a1 b3 b1 a3').inwards).toBe(0)
    // Four over 200 mm: 25 mm is just half of a share.
    const row = [-100, 0, 25, 100].map((x, index) => ({ id: 'LMNR'[index]!, x, y: 0 }))
    expect(measure(row, 'N M L R').inwards).toBe(0)
  })

  it('knows a circle wherever it lies on the face', () => {
    const shifted = circle(8).map((place) => ({ ...place, x: place.x + 400, y: place.y - 90 }))
    expect(measure(shifted, '1 5 3 7 2 6 4 8')).toMatchObject({ inwards: null, said: [] })
  })

  it('finds a wheel pulled round and round', () => {
    expect(measure(circle(10), '1 2 3 4 5 6 7 8 9 10').said).toHaveLength(1)
  })

  it('calls the fasteners by what is written beside them', () => {
    const [remark] = measureOrder(row, ({ id }) => `bolt ${id.slice(1)}`).remarks
    expect(remark && lineOf(remark)).toContain('order-begins-outside: first=bolt 1, nearer=5')
  })

  it('of no fastener is nothing', () => {
    expect(measureOrder([])).toEqual({ inwards: null, inLine: 0, remarks: [] })
  })

  it('is a share, which the reversed order takes the rest of', () => {
    checkProperty(
      fc.property(fc.shuffledSubarray([...caps], { minLength: 4 }), (order) => {
        const { inwards } = measureOrder(order)
        const back = measureOrder(order.toReversed()).inwards
        if (inwards === null || back === null) return
        expect(inwards + back).toBeCloseTo(1, 12)
      }),
    )
  })
})
