import type { Box } from '../../core/layout/index.ts'
import type { Mark } from './marks.ts'

/** No letter of any font is wider, in sizes of it; what stands above and below the line is not higher. */
const mostOverWidth = 1.3

/** All that marks can cover, in mm on the sheet: never less, and more where words are. Null where there are none. */
export function extentOf(marks: readonly Mark[]): Box | null {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  const take = (x: number, y: number, across: number, down = across): void => {
    left = Math.min(left, x - across)
    top = Math.min(top, y - down)
    right = Math.max(right, x + across)
    bottom = Math.max(bottom, y + down)
  }
  for (const mark of marks) {
    if (mark.kind === 'path') {
      const { points, width } = mark
      for (let index = 0; index + 1 < points.length; index += 2)
        take(points[index] ?? 0, points[index + 1] ?? 0, width / 2)
    } else if (mark.kind === 'circle') take(mark.x, mark.y, mark.radius + mark.width / 2)
    else if (mark.kind === 'sector') take(mark.x, mark.y, mark.outer)
    else {
      const halo = mark.halo?.width ?? 0
      // To either side, whatever the anchor and the direction of the letters.
      const length = mark.text.length * mark.size * mostOverWidth
      take(mark.x, mark.baseline, length + halo, mark.size * mostOverWidth + halo)
    }
  }
  return left > right ? null : { left, top, width: right - left, height: bottom - top }
}

/** What holds both. */
export function around(one: Box | null, other: Box | null): Box | null {
  if (one === null || other === null) return one ?? other
  const left = Math.min(one.left, other.left)
  const top = Math.min(one.top, other.top)
  return {
    ...{ left, top },
    width: Math.max(one.left + one.width, other.left + other.width) - left,
    height: Math.max(one.top + one.height, other.top + other.height) - top,
  }
}
