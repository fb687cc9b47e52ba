import { boxAround, type Point } from '../../plane/index.ts'
import type { BearingPlace, OnFace } from './on-face.ts'
import type { Boss } from './outline.ts'
import { spanOver } from './polygon.ts'
import type { Box } from '../scene/scene.ts'
import { acrossAnEnd } from '../view.ts'

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
    const clear = clearOf(whole, bosses)
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

/**
 * The box with its sides moved so that every boss lies outside: each moves the side whose moving loses least. Those that
 * cost most come first, so that one side is moved for a whole row of bosses and not, at the row's ends, another one too.
 */
function clearOf(box: Box, bosses: readonly Boss[]): Box {
  const right = box.left + box.width
  const bottom = box.top + box.height
  const clear = { left: box.left, right, top: box.top, bottom }
  const reaching = bosses
    .map(({ x, y, radius }) => ({ x, y, reach: radius + 2 }))
    .filter(
      ({ x, y, reach }) =>
        x + reach > box.left && x - reach < right && y + reach > box.top && y - reach < bottom,
    )
    .map(({ x, y, reach }) => {
      const lost = {
        left: (x + reach - box.left) * box.height,
        right: (right - x + reach) * box.height,
        top: (y + reach - box.top) * box.width,
        bottom: (bottom - y + reach) * box.width,
      }
      return { x, y, reach, lost, least: Math.min(lost.left, lost.right, lost.top, lost.bottom) }
    })
    .sort((a, b) => b.least - a.least)
  for (const { x, y, reach, lost, least } of reaching) {
    if (x + reach <= clear.left || x - reach >= clear.right) continue
    if (y + reach <= clear.top || y - reach >= clear.bottom) continue
    if (least === lost.left) clear.left = x + reach
    else if (least === lost.right) clear.right = x - reach
    else if (least === lost.top) clear.top = y + reach
    else clear.bottom = y - reach
  }
  return {
    left: clear.left,
    top: clear.top,
    width: clear.right - clear.left,
    height: clear.bottom - clear.top,
  }
}
