import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fitting, largestScale, panned, zoomed } from '../../../renderer/canvas/camera.ts'
import { checkProperty } from '../../property.ts'

const frame = { left: -50, top: -200, width: 470, height: 350 }
const window = { width: 940, height: 700 }

describe('the camera', () => {
  const fit = fitting(frame, window)

  it('fits the whole frame into the window: 2 px to the millimetre here', () => {
    expect(fit).toEqual({ scale: 2, x: 100, y: 400 })
  })

  it('puts a frame of other proportions in the middle', () => {
    expect(fitting(frame, { width: 1140, height: 700 })).toEqual({ scale: 2, x: 200, y: 400 })
  })

  it('keeps the place under the pointer where it is while zooming', () => {
    const at = { x: 300, y: 250 }
    const near = zoomed(fit, 3, at, frame, window)
    expect(near.scale).toBe(6)
    expect((at.x - near.x) / near.scale).toBeCloseTo((at.x - fit.x) / fit.scale, 9)
    expect((at.y - near.y) / near.scale).toBeCloseTo((at.y - fit.y) / fit.scale, 9)
  })

  it('zooms no further out than the whole and no further in than its limit', () => {
    expect(zoomed(fit, 0.1, { x: 0, y: 0 }, frame, window)).toEqual(fit)
    expect(zoomed(fit, 1000, { x: 0, y: 0 }, frame, window).scale).toBe(2 * largestScale)
  })

  it('never shows anything beside the sheet, however it is dragged', () => {
    const drag = fc.tuple(
      fc.double({ min: -5000, max: 5000, noNaN: true }),
      fc.double({ min: -5000, max: 5000, noNaN: true }),
    )
    checkProperty(
      fc.property(
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.array(drag, { maxLength: 6 }),
        (factor, drags) => {
          const near = zoomed(fit, factor, { x: 470, y: 350 }, frame, window)
          const end = drags.reduce((camera, [dx, dy]) => panned(camera, dx, dy, frame, window), near)
          expect(frame.left * end.scale + end.x).toBeLessThanOrEqual(1e-6)
          expect((frame.left + frame.width) * end.scale + end.x).toBeGreaterThanOrEqual(window.width - 1e-6)
          expect(frame.top * end.scale + end.y).toBeLessThanOrEqual(1e-6)
        },
      ),
    )
  })
})
