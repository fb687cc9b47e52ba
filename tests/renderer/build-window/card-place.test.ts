import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sceneOf, bareFacts } from '../../../core/layout/index.ts'
import { cardPlace, thingAsked } from '../../../renderer/build-window/card-place.ts'
import { fitting } from '../../../renderer/canvas/camera.ts'
import { demo } from '../../core/layout/demos.ts'
import { checkProperty } from '../../property.ts'
import { en } from '../../../core/words/index.ts'

const board = { width: 900, height: 600 }
const card = { width: 400, height: 200 }

describe('the place of a card', () => {
  it('is right of the thing, else left of it, below, or above', () => {
    const thing = (left: number, top: number) => ({ left, top, width: 40, height: 40 })
    expect(cardPlace(thing(100, 280), card, board)).toEqual({ left: 154, top: 200 })
    expect(cardPlace(thing(700, 280), card, board)).toEqual({ left: 286, top: 200 })
    const broad = { left: 200, top: 100, width: 500, height: 40 }
    expect(cardPlace(broad, card, board)).toEqual({ left: 250, top: 154 })
    expect(cardPlace({ ...broad, top: 500 }, card, board)).toEqual({ left: 250, top: 286 })
  })

  it('is the corner that covers least where there is room nowhere', () => {
    const size = { width: 880, height: 580 }
    expect(cardPlace({ left: 20, top: 20, ...size }, card, board)).toEqual({ left: 8, top: 8 })
    expect(cardPlace({ left: 0, top: 0, ...size }, card, board)).toEqual({ left: 492, top: 392 })
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
        const { left, top } = cardPlace(thing, card, board)
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

describe('the thing that was asked about', () => {
  const spec = demo('skerry-3')
  const sheet = { widthPx: board.width, heightPx: board.height, capitalPx: 12 }
  const scene = sceneOf(en, spec, bareFacts('joint'), { from: 'below', turn: 0 }, sheet)
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
