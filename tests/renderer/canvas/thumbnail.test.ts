import { describe, expect, it } from 'vitest'
import { en } from '../../../core/words/index.ts'
import { svgOf } from '../../../renderer/canvas/svg.ts'
import { thumbnailOf } from '../../../renderer/canvas/thumbnail.ts'
import { thumbnailSize } from '../../../renderer/canvas/thumbnail-size.ts'
import { demos } from '../../core/layout/demos.ts'

describe.each(demos)('the thumbnail of $name', (spec) => {
  const { frame, shapes } = thumbnailOf(en, spec)

  it('shows the whole outline on a sheet of its own proportions, and fills it one way or the other', () => {
    const edge = shapes.find(({ role }) => role === 'outline')
    const points = edge?.kind === 'line' ? edge.points : []
    const along = (axis: 0 | 1) => points.filter((_, index) => index % 2 === axis)
    const width = Math.max(...along(0)) - Math.min(...along(0))
    const height = Math.max(...along(1)) - Math.min(...along(1))
    expect(frame.width / frame.height).toBeCloseTo(thumbnailSize.width / thumbnailSize.height, 9)
    const filled = Math.max(width / frame.width, height / frame.height)
    expect(filled).toBeGreaterThan(0.85)
    expect(filled).toBeLessThan(1)
  })

  it('draws every circle whole, and none is cut at its edge', () => {
    const circles = shapes.filter((shape) => shape.kind === 'circle')
    expect(circles.length).toBeGreaterThan(0)
    for (const { x, y, radius } of circles) {
      expect(x - radius).toBeGreaterThanOrEqual(frame.left)
      expect(x + radius).toBeLessThanOrEqual(frame.left + frame.width)
      expect(y - radius).toBeGreaterThanOrEqual(frame.top)
      expect(y + radius).toBeLessThanOrEqual(frame.top + frame.height)
    }
  })

  it('has no words, and a size that a list of engines can bear', () => {
    const svg = svgOf(
      { frame, shapes, rows: [] },
      { theme: 'light', widthPx: thumbnailSize.width, title: '' },
    )
    expect(svg).not.toContain('<text')
    expect(svg.length).toBeLessThan(30_000)
  })
})
