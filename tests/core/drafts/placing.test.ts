import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  aligned,
  inNanometres,
  lengthTextOf,
  lossesWith,
  mirrored,
  mirroredPlace,
  moved,
  movedTo,
  placed,
  placedThings,
  removed,
  repeated,
  repeatedRound,
  snapped,
  thingsOn,
  type SpecDocument,
  type Thing,
} from '../../../core/drafts/index.ts'
import { engineSpec } from '../../../core/engine/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { checkProperty } from '../../property.ts'
import { documentOf } from './document-of-demo.ts'

const fen = documentOf('fen-1')
const mm = 1_000_000
const at = (x: number, y: number) => ({ x: x * mm, y: y * mm })
const bolt = (id: string): Thing => ({ kind: 'fastener', id })
const placeOf = (document: SpecDocument, thing: Thing) => placedThings(document, [thing])[0]?.at
const isRead = (document: SpecDocument) => engineSpec.safeParse(document).success

/** Throws where the outcome is a refusal. */
function good<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(outcome.problem.code)
  return outcome.value
}
const codeOf = (outcome: Outcome<unknown>) => (outcome.ok ? null : outcome.problem.code)

/** The case joint of fen-1 reaches from x = 4 to 196 mm and from y = −100 to 100 mm, its corners cut. */
const onJoint = fc.record({
  x: fc.integer({ min: -30_000_000, max: 230_000_000 }),
  y: fc.integer({ min: -130_000_000, max: 130_000_000 }),
})

describe('a length of a document', () => {
  it('keeps its nanometre in either unit', () => {
    expect(inNanometres('2.4409 in')).toBe(61_998_860)
    expect(lengthTextOf(61_998_860, 'in')).toBe('2.4409 in')
    expect(lengthTextOf(46 * mm, 'mm')).toBe('46 mm')
    expect(lengthTextOf(0, 'mm')).toBe('0 mm')
    checkProperty(
      fc.property(fc.integer({ min: -9e9, max: 9e9 }), fc.constantFrom('mm', 'in'), (length, unit) => {
        expect(inNanometres(lengthTextOf(length, unit as 'mm'))).toBe(length)
      }),
    )
  })
})

describe('a move', () => {
  it('goes by so much, in the unit the place was typed in', () => {
    const inches = structuredClone(fen)
    inches.fasteners[0]!.at = ['2 in', '1.5 in']
    const document = good(moved(inches, [bolt('case-1')], { x: 25_400_000, y: 0 }))
    // The axis that does not change keeps its text.
    expect(document.fasteners[0]!.at).toEqual(['3 in', '1.5 in'])
  })

  it('to where it is changes nothing', () => {
    const document = good(movedTo(fen, bolt('case-1'), at(46, 44)))
    expect(document).toEqual(fen)
  })

  it('never leads off the face, and then changes nothing', () => {
    checkProperty(
      fc.property(onJoint, (place) => {
        const outcome = movedTo(fen, bolt('case-1'), place)
        const inBox = place.x >= 4 * mm && place.x <= 196 * mm && Math.abs(place.y) <= 100 * mm
        if (!inBox) expect(codeOf(outcome)).toBe('draft-off-face')
        if (outcome.ok) {
          expect(inBox).toBe(true)
          expect(placeOf(outcome.value, bolt('case-1'))).toEqual(place)
          expect(isRead(outcome.value)).toBe(true)
        }
      }),
    )
  })
})

describe('a new dowel or oil way', () => {
  it('has the size that is said, or that of the last on its face; without both it is refused', () => {
    expect(codeOf(placed(fen, 'rods', at(30, 20), { kind: 'dowel' }))).toBe('draft-size-unsaid')
    const first = good(placed(fen, 'rods', at(30, 20), { kind: 'dowel', diameter: '7 mm' }))
    const second = good(placed(first.document, 'rods', at(60, 20), { kind: 'dowel' }))
    expect(second.document.case.dowels?.at(-1)?.diameter).toBe('7 mm')
    // A dowel of another face says nothing of this one.
    expect(codeOf(placed(second.document, 'cover', at(0, 0), { kind: 'dowel' }))).toBe('draft-size-unsaid')
    const way = { kind: 'oil-passage', name: 'oil way' } as const
    expect(codeOf(placed(fen, 'rods', at(30, 20), way))).toBe('draft-size-unsaid')
    const oil = good(placed(fen, 'rods', at(30, 20), { ...way, size: ['6 mm', '9 mm'] }))
    expect(oil.document.case.oilPassages?.at(-1)?.size).toEqual(['6 mm', '9 mm'])
  })
})

describe('a mirror image', () => {
  it('of a place, taken twice, is the place', () => {
    checkProperty(
      fc.property(onJoint, fc.constantFrom('joint', 'rods', 'cover'), (place, face) => {
        const twice = mirroredPlace(fen, face, mirroredPlace(fen, face, place))
        expect(twice).toEqual({ x: place.x + 0, y: place.y + 0 })
      }),
    )
  })

  it('lies across the axis, has an id and a number of its own and names the other side', () => {
    const alone = good(
      placed(fen, 'joint', at(100, 90), {
        kind: 'fastener',
        group: 'case-bolts',
        where: 'middle, flywheel top',
      }),
    )
    const { document, copies } = good(mirrored(alone.document, [alone.thing]))
    expect(copies).toHaveLength(1)
    expect(placeOf(document, copies[0]!)).toEqual(at(100, -90))
    const copy = document.fasteners.at(-1)!
    expect(copy.where).toBe('middle, foot side')
    expect(new Set(document.fasteners.map(({ id }) => id)).size).toBe(document.fasteners.length)
    const numbers = document.fasteners.filter(({ face }) => face === 'joint').map(({ number }) => number)
    expect(new Set(numbers).size).toBe(numbers.length)
    expect(isRead(document)).toBe(true)
  })

  it('is not made twice: mirrored back, nothing new comes', () => {
    const alone = good(placed(fen, 'joint', at(100, 90), { kind: 'dowel', diameter: '8 mm' }))
    const once = good(mirrored(alone.document, [alone.thing]))
    const back = good(mirrored(once.document, [alone.thing, ...once.copies]))
    expect(back.copies).toEqual([])
    expect(back.document).toBe(once.document)
  })

  it('of one that lies on the axis is none', () => {
    const alone = good(placed(fen, 'joint', at(100, 0), { kind: 'dowel', diameter: '8 mm' }))
    expect(good(mirrored(alone.document, [alone.thing])).copies).toEqual([])
  })

  it('on a face across an end lies left and right', () => {
    expect(mirroredPlace(fen, 'cover', at(10, 30))).toEqual(at(-10, 30))
  })
})

describe('a repetition', () => {
  it('gives so many in all, each at the pitch from the one before', () => {
    const { thing, document } = good(placed(fen, 'joint', at(30, 20), { kind: 'dowel', diameter: '8 mm' }))
    checkProperty(
      fc.property(
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 1_000_001, max: 20_000_000 }),
        (count, pitch) => {
          const outcome = good(repeated(document, [thing], count, { x: pitch, y: 0 }))
          const row = [thing, ...outcome.copies].map((each) => placeOf(outcome.document, each)!.x)
          expect(row).toHaveLength(count)
          expect(row.slice(1).every((x, index) => x - row[index]! === pitch)).toBe(true)
        },
      ),
    )
  })

  it('that would leave the face is refused whole', () => {
    expect(codeOf(repeated(fen, [bolt('case-1')], 9, at(40, 0)))).toBe('draft-off-face')
  })

  it('round a circle lies on it, evenly', () => {
    const { thing, document } = good(placed(fen, 'joint', at(130, 50), { kind: 'dowel', diameter: '8 mm' }))
    const { copies, document: after } = good(repeatedRound(document, [thing], 6, at(100, 50)))
    const places = [thing, ...copies].map((each) => placeOf(after, each)!)
    expect(places).toHaveLength(6)
    // On a circle of 30 mm neighbours of six lie 30 mm apart: the sides of a hexagon are its radius.
    places.forEach((place, index) => {
      const next = places[(index + 1) % 6]!
      expect(Math.hypot(place.x - 100 * mm, place.y - 50 * mm)).toBeCloseTo(30 * mm, -1)
      expect(Math.hypot(place.x - next.x, place.y - next.y)).toBeCloseTo(30 * mm, -1)
    })
  })
})

describe('an alignment', () => {
  const three = ['case-1', 'case-2', 'case-3'].map(bolt)

  it('brings all into the row of the first, or its column', () => {
    const row = good(aligned(fen, three, 'row'))
    expect(new Set(three.map((each) => placeOf(row, each)!.y)).size).toBe(1)
    expect(three.map((each) => placeOf(row, each)!.x)).toEqual(three.map((each) => placeOf(fen, each)!.x))
    expect(placeOf(row, three[0]!)).toEqual(placeOf(fen, three[0]!))
  })

  it('spreads evenly between the outer two', () => {
    const first = good(placed(fen, 'joint', at(30, 0), { kind: 'dowel', diameter: '8 mm' }))
    const second = good(placed(first.document, 'joint', at(40, 3), { kind: 'dowel', diameter: '8 mm' }))
    const third = good(placed(second.document, 'joint', at(130, 0), { kind: 'dowel', diameter: '8 mm' }))
    const document = good(aligned(third.document, [first.thing, second.thing, third.thing], 'spread'))
    expect(placeOf(document, second.thing)).toEqual(at(80, 3))
    expect(placeOf(document, third.thing)).toEqual(at(130, 0))
  })
})

describe('a place that is drawn to what is near', () => {
  it('falls on the middle of a saddle, the axis, or the line of another fastener', () => {
    expect(snapped(fen, 'joint', at(46.7, 1.2), 2 * mm).at).toEqual(at(46, 0))
    const lone = snapped(fen, 'joint', at(100.3, 71.2), 0.25 * mm)
    expect(lone.at).toEqual(at(100, 71))
  })

  it('is not drawn to what is moved itself', () => {
    const own = new Set(thingsOn(fen, 'joint').map(({ kind, id }) => `${kind}/${id}`))
    const { lines } = snapped(fen, 'joint', at(60, 80), 1.5 * mm, own)
    expect(lines.filter(({ of }) => of === 'thing')).toEqual([])
  })
})

describe('taking out', () => {
  it('takes fasteners out of orders, which is said before', () => {
    const losses = lossesWith(fen, [bolt('case-1')])
    expect(losses.orders.map(({ count }) => count)).toEqual([1])
    const document = good(removed(fen, [bolt('case-1')]))
    expect(document.fasteners.some(({ id }) => id === 'case-1')).toBe(false)
    expect(JSON.stringify(document.procedures)).not.toContain('"case-1"')
    expect(isRead(document)).toBe(true)
  })

  it('refuses to leave an order empty', () => {
    const all = fen.fasteners.map(({ id }) => bolt(id))
    expect(codeOf(removed(fen, all))).toBe('draft-order-left-empty')
  })

  it('takes a value of their own along, and keeps that of the others', () => {
    const own = structuredClone(fen)
    own.procedures[0]!.passes = [
      {
        kind: 'torque',
        order: own.procedures[0]!.orders[0]!.id,
        target: '20 N·m',
        others: [
          { fasteners: ['case-1'], target: '22 N·m' },
          { fasteners: ['case-1', 'case-2'], target: '24 N·m' },
        ],
      },
    ]
    const [pass] = good(removed(own, [bolt('case-1')])).procedures[0]!.passes
    expect(pass).toMatchObject({ others: [{ fasteners: ['case-2'], target: '24 N·m' }] })
    expect(lossesWith(own, [bolt('case-1')]).passes).toEqual([{ procedure: own.procedures[0]!.id, pass: 1 }])
  })
})
