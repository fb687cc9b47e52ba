import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sceneOf, bareFacts, type Box } from '../../../core/layout/index.ts'
import { cardPlace, nextInWindow, thingAsked } from '../../../renderer/build-window/card-place.ts'
import { fitting } from '../../../renderer/canvas/camera.ts'
import { demo } from '../../core/layout/demos.ts'
import { checkProperty } from '../../property.ts'
import { en } from '../../../core/words/index.ts'

const board = { width: 900, height: 600 }
const card = { width: 400, height: 200 }

describe('the place of a card', () => {
  it('is right of the thing, else left of it, below, or above', () => {
    const thing = (left: number, top: number) => ({ left, top, width: 40, height: 40 })
    expect(cardPlace(thing(100, 280), card, board, [])).toEqual({ left: 154, top: 200, height: 200 })
    expect(cardPlace(thing(700, 280), card, board, [])).toEqual({ left: 286, top: 200, height: 200 })
    const broad = { left: 200, top: 100, width: 500, height: 40 }
    expect(cardPlace(broad, card, board, [])).toEqual({ left: 250, top: 154, height: 200 })
    expect(cardPlace({ ...broad, top: 500 }, card, board, [])).toMatchObject({ left: 250, top: 286 })
  })

  it('is the corner that covers least where there is room nowhere', () => {
    const size = { width: 880, height: 580 }
    expect(cardPlace({ left: 20, top: 20, ...size }, card, board, [])).toMatchObject({ left: 8, top: 8 })
    expect(cardPlace({ left: 0, top: 0, ...size }, card, board, [])).toMatchObject({ left: 492, top: 392 })
  })

  it('is inside the board, and beside the thing wherever one of the four sides has room', () => {
    const box = fc.record({
      left: fc.integer({ min: 0, max: 850 }),
      top: fc.integer({ min: 0, max: 550 }),
      width: fc.integer({ min: 4, max: 700 }),
      height: fc.integer({ min: 4, max: 500 }),
    })
    checkProperty(
      fc.property(box, (thing) => {
        const { left, top } = cardPlace(thing, card, board, [])
        expect(left).toBeGreaterThanOrEqual(8)
        expect(top).toBeGreaterThanOrEqual(8)
        expect(left + card.width).toBeLessThanOrEqual(board.width - 8)
        expect(top + card.height).toBeLessThanOrEqual(board.height - 8)
        const right = thing.left + thing.width
        const bottom = thing.top + thing.height
        const hasRoom =
          right + 14 + card.width <= 892 ||
          thing.left - 14 - card.width >= 8 ||
          bottom + 14 + card.height <= 592 ||
          thing.top - 14 - card.height >= 8
        const covers =
          left < right && thing.left < left + card.width && top < bottom && thing.top < top + card.height
        if (hasRoom) expect(covers).toBe(false)
      }),
    )
  })
})

describe('a card beside what is next', () => {
  const covers = (one: Box, other: Box) =>
    one.left < other.left + other.width &&
    other.left < one.left + one.width &&
    one.top < other.top + other.height &&
    other.top < one.top + one.height

  it('goes to the other side of its thing where what is next stands on the first', () => {
    const thing = { left: 430, top: 280, width: 40, height: 40 }
    const next = { left: 560, top: 270, width: 60, height: 60 }
    expect(cardPlace(thing, card, board, [])).toMatchObject({ left: 484 })
    expect(cardPlace(thing, card, board, [next])).toMatchObject({ left: 16, top: 200 })
  })

  it('is cut rather than laid over it', () => {
    const thing = { left: 100, top: 40, width: 40, height: 40 }
    const next = { left: 420, top: 300, width: 60, height: 60 }
    const high = { width: 450, height: 580 }
    const place = cardPlace(thing, high, board, [next])
    expect(place.height).toBeLessThan(580)
    expect(covers({ ...place, width: 450 }, next)).toBe(false)
    expect(covers({ ...place, width: 450 }, thing)).toBe(false)
  })

  it('is never over it, wherever the window has room for the least of a card', () => {
    const size = (least: number, most: number) => fc.integer({ min: least, max: most })
    const share = fc.double({ min: 0, max: 1, noNaN: true })
    const layout = fc.record({
      window: fc.record({ width: size(440, 1700), height: size(300, 1000) }),
      at: fc.record({ left: share, top: share }),
      thingAt: fc.record({ left: share, top: share }),
      thing: fc.record({ width: size(10, 500), height: size(10, 400) }),
      next: size(30, 200),
      callout: fc.record({ width: size(100, 400), height: size(24, 70) }),
      cardHeight: size(80, 900),
    })
    checkProperty(
      fc.property(layout, ({ window, at, thingAt, thing, next, callout, cardHeight }) => {
        const inside = (share: number, length: number, room: number) => share * Math.max(0, room - length)
        const what = {
          ...thing,
          left: inside(thingAt.left, thing.width, window.width),
          top: inside(thingAt.top, thing.height, window.height),
        }
        const nextBoxes = [
          {
            left: inside(at.left, next, window.width),
            top: inside(at.top, next, window.height),
            width: next,
            height: next,
          },
          { left: 12, top: 40, ...callout },
        ]
        const place = cardPlace(what, { width: 400, height: cardHeight }, window, nextBoxes)
        const box = { ...place, width: 400 }
        expect(place.height).toBeLessThanOrEqual(cardHeight)
        expect(box.left).toBeGreaterThanOrEqual(8)
        expect(box.left + 400).toBeLessThanOrEqual(window.width - 8)
        expect(box.top + place.height).toBeLessThanOrEqual(window.height - 8)
        /** Looked for on a grid: whether the least of a card lies free of all these. */
        const hasRoom = (boxes: readonly Box[]) => {
          const height = Math.min(120, cardHeight)
          for (let left = 8; left + 400 <= window.width - 8; left += 4)
            for (let top = 8; top + height <= window.height - 8; top += 4)
              if (!boxes.some((other) => covers({ left, top, width: 400, height }, other))) return true
          return false
        }
        if (hasRoom(nextBoxes)) expect(nextBoxes.some((each) => covers(box, each))).toBe(false)
        if (hasRoom([what, ...nextBoxes])) expect(covers(box, what)).toBe(false)
      }),
    )
  })

  it('knows what is next by its disc and by its callout, and not by the way to it', () => {
    const bare = bareFacts('joint')
    const facts = {
      ...bare,
      callout: '24 N·m',
      fasteners: { ...bare.fasteners, 'case-1': { number: '1', state: 'next' as const, share: 0 } },
    }
    const next = sceneOf(en, demo('skerry-3'), facts, { from: 'below', turn: 0 }, sheetOf(board))
    const camera = fitting(next.frame, board)
    const disc = thingAsked({ about: 'fastener/case-1', at: null, seq: 1 }, next, camera, board)!
    expect(disc.width).toBeLessThan(100)
    const boxes = nextInWindow(next, camera)
    const callout = boxes.filter((each) => !covers(each, disc))
    expect(boxes.length).toBeGreaterThan(callout.length)
    expect(callout.length).toBeGreaterThan(0)
    expect(Math.max(...callout.map(({ top, height }) => top + height))).toBeLessThan(200)
  })
})

function sheetOf({ width, height }: { readonly width: number; readonly height: number }) {
  return { widthPx: width, heightPx: height, capitalPx: 12 }
}

describe('the thing that was asked about', () => {
  const spec = demo('skerry-3')
  const scene = sceneOf(en, spec, bareFacts('joint'), { from: 'below', turn: 0 }, sheetOf(board))
  const camera = fitting(scene.frame, board)
  const ask = (about: string, at: { x: number; y: number } | null) =>
    thingAsked({ about, at, seq: 1 }, scene, camera, board)

  it('is where it is drawn, whether it was tapped at its rim or asked for by keys', () => {
    expect(ask('fastener/case-1', { x: 10, y: 10 })).toEqual(ask('fastener/case-1', null))
    const { width, height } = ask('fastener/case-1', null)!
    expect(width).toBeCloseTo(height, 6)
  })

  it('is the place that was tapped where it is as wide as the drawing', () => {
    expect(ask('face/joint', { x: 300, y: 200 })).toEqual({ left: 280, top: 180, width: 40, height: 40 })
    expect(ask('face/joint', null)!.width).toBeGreaterThan(board.width / 2)
  })

  it('is nowhere where it is not drawn', () => {
    expect(ask('fastener/none', null)).toBeNull()
  })
})
