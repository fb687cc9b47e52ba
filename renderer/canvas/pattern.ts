import type { Pattern } from '../../core/engine/index.ts'
import type { Box } from '../../core/layout/index.ts'

/** The lines and dots of a pattern, cut to its box. Plain data, so that canvas and SVG draw the very same. */
export interface PatternMarks {
  /** Each x0, y0, x1, y1, … */
  readonly lines: readonly (readonly number[])[]
  readonly dots: readonly Dot[]
  readonly rings: readonly Dot[]
}

export interface Dot {
  readonly x: number
  readonly y: number
  readonly radius: number
}

/** A pattern over a box; `step` is the distance from one of its lines to the next. */
export function patternMarks(pattern: Pattern, box: Box, step: number): PatternMarks {
  const none: PatternMarks = { lines: [], dots: [], rings: [] }
  const right = box.left + box.width
  const bottom = box.top + box.height
  const rows = inside(box.top, bottom, step)
  const columns = inside(box.left, right, step)
  const across = rows.map((y) => [box.left, y, right, y])
  switch (pattern) {
    case 'plain':
      return none
    case 'bars':
      return { ...none, lines: across }
    case 'grid':
      return { ...none, lines: [...across, ...columns.map((x) => [x, box.top, x, bottom])] }
    case 'slant':
      return { ...none, lines: slanting(box, step * 1.2) }
    case 'dots':
      return { ...none, dots: staggered(box, step, step * 0.2) }
    case 'rings':
      return { ...none, rings: staggered(box, step * 1.5, step * 0.42) }
    case 'crosses':
      return {
        ...none,
        lines: staggered(box, step * 1.4, step * 0.36).flatMap(({ x, y, radius }) => [
          [x - radius, y, x + radius, y],
          [x, y - radius, x, y + radius],
        ]),
      }
    case 'waves':
      return { ...none, lines: inside(box.top, bottom, step * 1.15).map((y) => wave(box, y, step)) }
    case 'steps':
      return { ...none, lines: inside(box.top, bottom, step * 1.3).map((y) => stairs(box, y, step)) }
    default:
      return pattern satisfies never
  }
}

/** Evenly spaced places between two ends, with a margin of at least 0.4 steps to each. */
function inside(from: number, to: number, step: number): readonly number[] {
  const count = Math.max(1, Math.floor((to - from) / step + 0.2))
  const first = (from + to) / 2 - ((count - 1) * step) / 2
  return Array.from({ length: count }, (_, index) => first + index * step)
}

function staggered({ left, top, width, height }: Box, step: number, radius: number): readonly Dot[] {
  return inside(top, top + height, step).flatMap((y, row) =>
    inside(left, left + width, step)
      .map((x) => ({ x: x + (row % 2 === 0 ? 0 : step / 2), y, radius }))
      .filter(({ x }) => x + radius <= left + width),
  )
}

function wave({ left, width }: Box, y: number, step: number): readonly number[] {
  const points = Math.max(8, Math.round((width / step) * 8))
  return Array.from({ length: points + 1 }, (_, index) => {
    const along = (index / points) * width
    return [left + along, y + step * 0.26 * Math.sin((along / step) * Math.PI)]
  }).flat()
}

function stairs({ left, width }: Box, y: number, step: number): readonly number[] {
  const treads = Math.max(2, Math.round(width / step))
  return Array.from({ length: treads }, (_, index) => {
    const level = y + (index % 2 === 0 ? -0.26 : 0.26) * step
    return [left + (index / treads) * width, level, left + ((index + 1) / treads) * width, level]
  }).flat()
}

/** Lines rising to the right at 45°, each cut to the box. */
export function slanting({ left, top, width, height }: Box, step: number): readonly (readonly number[])[] {
  const count = Math.max(1, Math.floor((width + height) / step))
  const first = (width + height - (count - 1) * step) / 2
  return Array.from({ length: count }, (_, index) => {
    // x + y is the same all along such a line, measured from the upper left corner.
    const sum = first + index * step
    const low = Math.min(sum, height)
    const far = Math.min(sum, width)
    return [left + sum - low, top + low, left + far, top + sum - far]
  })
}
