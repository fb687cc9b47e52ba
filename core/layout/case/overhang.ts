import { boxAround, type Point } from '../../plane/index.ts'
import type { Disc } from '../labels/discs.ts'
import { inside, nearestOn } from './polygon.ts'
import type { Box } from '../scene/scene.ts'

/** From the rim of a disc to the edge of the face, in px. */
const rimToEdge = 4
/** The edge of a face with more fasteners is not moved out for their symbols. */
const mostForEdge = 160

/** How far the edge must be moved out so that every disc that stands inside it lies inside, in px. */
export function overhangOf(discs: readonly Disc[], edge: readonly Point[], px: number): number {
  if (discs.length > mostForEdge) return 0
  return discs.reduce((most, disc) => {
    const reach = disc.radius + rimToEdge * px
    const nearestOnEdge = nearestOn(edge, disc, reach)
    if (nearestOnEdge === null || !inside(edge, disc)) return most
    return Math.max(most, (reach - Math.hypot(nearestOnEdge.x - disc.x, nearestOnEdge.y - disc.y)) / px)
  }, 0)
}

/** How far a disc reaches beyond a box, in mm: one that stands outside the face. */
export function beyondBox(discs: readonly Disc[], { left, top, width, height }: Box): number {
  return discs.reduce(
    (most, { x, y, radius }) =>
      Math.max(
        most,
        left - x + radius,
        x + radius - left - width,
        top - y + radius,
        y + radius - top - height,
      ),
    0,
  )
}

/** The closed line larger by so much on every side of its box. */
export function movedOut(edge: readonly Point[], by: number): readonly Point[] {
  if (by === 0) return edge
  const { left, top, width, height } = boxAround(edge)
  const [x, y] = [left + width / 2, top + height / 2]
  const [wider, higher] = [1 + (2 * by) / Math.max(width, 1e-9), 1 + (2 * by) / Math.max(height, 1e-9)]
  return edge.map((point) => ({ x: x + (point.x - x) * wider, y: y + (point.y - y) * higher }))
}
