import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  angleDrill,
  drillsOf,
  handleAtStart,
  judgeTurn,
  regripped,
  swung,
  type AngleTurn,
} from '../../../core/practice/index.ts'
import { degrees } from '../../../core/quantity/index.ts'
import { checkProperty } from '../../property.ts'
import { demo, demos } from '../layout/demos.ts'

const seeds = fc.integer({ min: 0, max: 10_000 }).map((round) => `round ${round}`)
const turned = demos.filter((spec) => drillsOf(spec).includes('angle'))

const turn = (change: Partial<AngleTurn> = {}): AngleTurn => ({
  fastener: 'case-1',
  window: { kind: 'angle', target: degrees(90), least: degrees(85), most: degrees(95), tolerance: 'spec' },
  ...{ start: degrees(0), room: null, grip: 'ratchet' },
  ...change,
})

describe('an angle drill', () => {
  it('can be turned to the degree in every room and with every grip, and is then within', () => {
    const rooms = new Set<string>()
    checkProperty(
      fc.property(fc.constantFrom(...turned), seeds, (spec, seed) => {
        for (const each of angleDrill(spec, seed)!.turns) {
          let place = handleAtStart
          for (let grips = 0; place.turned < each.window.target && grips < 40; grips += 1)
            place = regripped(each, swung(each, place, each.window.target - place.turned))
          expect(judgeTurn(each, place)).toEqual({ reached: each.window.target, off: 0, verdict: 'within' })
          rooms.add(`${each.room}/${each.grip}`)
        }
      }),
      { numRuns: 150, leastShare: 0.95 },
    )
    expect(rooms.size).toBe(15)
  })

  it('asks for what the pass asks of that fastener', () => {
    checkProperty(
      fc.property(fc.constantFrom(...turned), seeds, (spec, seed) => {
        const { procedure, pass, turns } = angleDrill(spec, seed)!
        const anglePass = procedure.passes[pass]!
        if (anglePass.kind !== 'angle') throw new Error('it asks for no turn')
        for (const { fastener, window } of turns) {
          const own = anglePass.others?.find(({ fasteners }) => fasteners.includes(fastener)) ?? anglePass
          expect(window.target).toBe(own.target)
          expect(procedure.orders.find(({ id }) => id === anglePass.order)?.sequence).toContain(fastener)
        }
      }),
      { numRuns: 100, leastShare: 0.95 },
    )
  })

  it('is not offered where no pass turns by an angle', () => {
    const spec = demo('skerry-3')
    expect(angleDrill({ ...spec, procedures: [] }, 'a')).toBeNull()
  })
})

describe('a handle', () => {
  it('stops at the end of its room, and a ratchet goes back to its start', () => {
    const narrow = turn({ room: 60 })
    const atEnd = swung(narrow, handleAtStart, 75)
    expect(atEnd).toEqual({ off: 60, turned: 60, grippedAt: 0 })
    const again = regripped(narrow, atEnd)
    expect(again).toEqual({ off: 0, turned: 60, grippedAt: 0 })
    expect(swung(narrow, again, 30).turned).toBe(90)
  })

  it('with a hexagon end goes back by whole flats alone', () => {
    const hexagon = turn({ room: 75, grip: 'hexagon' })
    expect(regripped(hexagon, swung(hexagon, handleAtStart, 50))).toMatchObject({ off: 50, turned: 50 })
    expect(regripped(hexagon, swung(hexagon, handleAtStart, 75))).toMatchObject({ off: 15, turned: 75 })
  })

  it('is turned back no further than where it was gripped', () => {
    const place = regripped(turn(), swung(turn(), handleAtStart, 40))
    expect(swung(turn(), place, -30)).toEqual(place)
    expect(swung(turn(), swung(turn(), place, 20), -5).turned).toBe(55)
  })

  it('that came too far or not far enough is scored by the degrees and judged by the limits', () => {
    expect(judgeTurn(turn(), { ...handleAtStart, turned: 97 })).toEqual({
      reached: 97,
      off: 7,
      verdict: 'over',
    })
    expect(judgeTurn(turn(), { ...handleAtStart, turned: 84 })).toMatchObject({ off: -6, verdict: 'under' })
    expect(judgeTurn(turn(), { ...handleAtStart, turned: 85 }).verdict).toBe('within')
  })
})
