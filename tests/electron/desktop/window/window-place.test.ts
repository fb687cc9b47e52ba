import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { placeFor } from '../../../../electron/desktop/window/window-place.ts'
import type { Rectangle, WindowPlace } from '../../../../electron/desktop/window/window-place.ts'
import { checkProperty } from '../../../property.ts'

const large: Rectangle = { x: 0, y: 0, width: 1920, height: 1040 }
const small: Rectangle = { x: 0, y: 0, width: 1366, height: 728 }
const right: Rectangle = { x: 1920, y: 0, width: 1280, height: 984 }
const leftAt = (bounds: Rectangle, state: WindowPlace['state'] = 'normal'): WindowPlace => ({ bounds, state })

describe('the place of the window', () => {
  it('is the middle of the main screen at first', () => {
    expect(placeFor(null, [large])).toEqual(leftAt({ x: 320, y: 100, width: 1280, height: 840 }))
  })

  it('is the whole of a screen on which its usual size has no room', () => {
    expect(placeFor(null, [small])).toEqual(leftAt({ x: 43, y: 0, width: 1280, height: 728 }, 'maximized'))
  })

  it('is where the window was left, on any screen that is still there', () => {
    const left = leftAt({ x: 2000, y: 50, width: 1000, height: 700 })
    expect(placeFor(left, [large, right])).toEqual(left)
    const whole = leftAt({ x: 10, y: 10, width: 900, height: 700 }, 'full-screen')
    expect(placeFor(whole, [large])).toEqual(whole)
  })

  it('is the middle of the main screen where the screen it was left on is gone, or next to nothing of it can be seen', () => {
    const hidden = leftAt({ x: 0, y: 1000, width: 1000, height: 700 })
    expect(placeFor(hidden, [large]).bounds).toMatchObject({ x: 460, y: 170 })
    const left = leftAt({ x: 2000, y: 50, width: 1000, height: 700 }, 'maximized')
    expect(placeFor(left, [large])).toEqual(leftAt({ x: 460, y: 170, width: 1000, height: 700 }, 'maximized'))
  })

  it('comes back from the edge, and fits a screen that is smaller now', () => {
    expect(placeFor(leftAt({ x: -400, y: 900, width: 1000, height: 700 }), [large]).bounds).toMatchObject({
      x: 0,
      y: 340,
    })
    expect(placeFor(leftAt({ x: -200, y: 100, width: 1000, height: 700 }), [large]).bounds).toMatchObject({
      x: 0,
      y: 100,
    })
    expect(placeFor(leftAt({ x: 0, y: 0, width: 1900, height: 1000 }), [small]).bounds).toEqual(small)
  })

  it('is on a screen whatever was left and whatever screens there are', () => {
    const number = fc.integer({ min: -5000, max: 5000 })
    const size = fc.integer({ min: 1, max: 6000 })
    const rectangle = fc.record({ x: number, y: number, width: size, height: size })
    const screen = fc.record({
      x: number,
      y: number,
      width: fc.integer({ min: 800, max: 4000 }),
      height: fc.integer({ min: 600, max: 3000 }),
    })
    let reached = 0
    checkProperty(
      fc.property(rectangle, screen, fc.array(screen, { maxLength: 2 }), (bounds, main, others) => {
        const { bounds: found } = placeFor(leftAt(bounds), [main, ...others])
        const contains = ({ x, y, width, height }: Rectangle): boolean =>
          found.x >= x &&
          found.y >= y &&
          found.x + found.width <= x + width &&
          found.y + found.height <= y + height
        expect([main, ...others].some(contains)).toBe(true)
        reached += 1
      }),
    )
    expect(reached).toBe(100)
  })
})
