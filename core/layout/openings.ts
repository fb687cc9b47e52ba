import { boxAround, type Point } from './box.ts'
import type { BearingPlace, OnFace } from './on-face.ts'
import type { Boss } from './outline.ts'
import { spanOver } from './polygon.ts'
import type { Box } from './scene.ts'
import { acrossAnEnd } from './view.ts'

/** Metal between an opening and the edge of the face, and between it and a bearing. */
const rail = 10
const web = 5

/**
 * The openings of a face, in mm of the engine's own frame: the crank's bays between the bulkheads that carry the
 * bearings, or the one mouth of a flange such as the sump's. They keep clear of every boss.
 */
export function openingsOf(
  { face, bearings }: OnFace,
  outline: readonly Point[],
  bosses: readonly Boss[],
): readonly Box[] {
  if (acrossAnEnd(face) || face.plane !== 'plan') return []
  const all = boxAround(outline)
  const bays =
    face.shows === 'flange'
      ? [{ from: all.left + rail, to: all.left + all.width - rail }]
      : between(bearings.filter(({ y }) => y === 0))
  return bays.flatMap(({ from, to }) => {
    const span = to - from > 2 * web ? spanOver(outline, from, to) : null
    if (span === null) return []
    const whole = {
      left: from,
      top: span.least + rail,
      width: to - from,
      height: span.most - span.least - 2 * rail,
    }
    const clear = bosses.reduce(keptClear, whole)
    return clear.width > 12 && clear.height > 12 ? [clear] : []
  })
}

function between(bearings: readonly BearingPlace[]): readonly { from: number; to: number }[] {
  const sorted = bearings.toSorted((a, b) => a.x - b.x)
  return sorted.slice(1).flatMap((after, index) => {
    const before = sorted[index]
    if (before === undefined) return []
    return [{ from: before.x + before.width / 2 + web, to: after.x - after.width / 2 - web }]
  })
}

/** The box with that one side moved that loses least, so that the boss lies outside. */
function keptClear(box: Box, { x, y, radius }: Boss): Box {
  const right = box.left + box.width
  const bottom = box.top + box.height
  const reach = radius + 2
  const outside = x + reach <= box.left || x - reach >= right || y + reach <= box.top || y - reach >= bottom
  if (outside) return box
  const cuts = [
    { lost: (x + reach - box.left) * box.height, left: x + reach, top: box.top, right, bottom },
    { lost: (right - x + reach) * box.height, left: box.left, top: box.top, right: x - reach, bottom },
    { lost: (y + reach - box.top) * box.width, left: box.left, top: y + reach, right, bottom },
    { lost: (bottom - y + reach) * box.width, left: box.left, top: box.top, right, bottom: y - reach },
  ]
  const best = cuts.reduce((least, cut) => (cut.lost < least.lost ? cut : least))
  return {
    left: best.left,
    top: best.top,
    width: Math.max(0, best.right - best.left),
    height: Math.max(0, best.bottom - best.top),
  }
}
