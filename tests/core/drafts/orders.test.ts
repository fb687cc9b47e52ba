import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  grownOrder,
  movedToPlace,
  orderNamed,
  painted,
  swapped,
  tapped,
  withSequence,
} from '../../../core/drafts/index.ts'
import { checkProperty } from '../../property.ts'
import { documentOf } from './document-of-demo.ts'

const fen = documentOf('fen-1')
const [procedure] = fen.procedures
const named = { procedure: procedure!.id, order: procedure!.orders[0]!.id }
const { sequence } = procedure!.orders[0]!
const ids = fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'), { minLength: 2 })

describe('an order that is tapped in', () => {
  it('has what is tapped last at its end; the last one tapped again is taken back, an earlier one stays', () => {
    expect(['a', 'b', 'a', 'c', 'c', 'd'].reduce<readonly string[]>(tapped, [])).toEqual(['a', 'b', 'd'])
  })
})

describe('an order that is mended', () => {
  it('keeps its fasteners, each once', () => {
    checkProperty(
      fc.property(ids, fc.nat(7), fc.nat(7), (order, from, place) => {
        const one = order[from % order.length]!
        const moved = movedToPlace(order, one, place + 1)
        expect(moved.toSorted()).toEqual(order.toSorted())
        expect(moved.indexOf(one)).toBe(Math.min(place, order.length - 1))
        // The others keep their order among one another.
        expect(moved.filter((each) => each !== one)).toEqual(order.filter((each) => each !== one))
      }),
    )
  })

  it('by changing two places, and back, is the order', () => {
    expect(swapped(['a', 'b', 'c'], 'a', 'c')).toEqual(['c', 'b', 'a'])
    expect(swapped(swapped(['a', 'b', 'c'], 'a', 'c'), 'a', 'c')).toEqual(['a', 'b', 'c'])
  })

  it('is no pattern any more, and never without a fastener', () => {
    const grown = grownOrder(fen, named, 'end-to-end', sequence)
    if (!grown.ok) throw new Error(grown.problem.code)
    const order = orderNamed(grown.value, named)!
    expect(order.pattern).toBe('end-to-end')
    expect(order.sequence.toSorted()).toEqual(sequence.toSorted())
    const at = order.sequence.map((id) =>
      Number.parseFloat(fen.fasteners.find((each) => each.id === id)!.at[0]),
    )
    expect(at).toEqual(at.toSorted((a, b) => a - b))
    const mended = withSequence(
      grown.value,
      named,
      swapped(order.sequence, order.sequence[0]!, order.sequence[1]!),
    )
    expect(mended.ok && orderNamed(mended.value, named)).not.toHaveProperty('pattern')
    const empty = withSequence(fen, named, [])
    expect(!empty.ok && empty.problem.code).toBe('draft-order-left-empty')
  })
})

describe('groups that are painted', () => {
  it('change for what is tapped alone', () => {
    const after = painted(fen, new Set(['case-1']), 'rod-bolts')
    expect(
      after.fasteners
        .filter((each, index) => each !== fen.fasteners[index])
        .map(({ id, group }) => [id, group]),
    ).toEqual([['case-1', 'rod-bolts']])
  })
})
