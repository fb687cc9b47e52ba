import { boxAround } from '../../plane/index.ts'
import type { Box, Shape } from '../scene/scene.ts'
import { textBox } from '../scene/about-at.ts'

/** From where to where a lane may run along the case. */
export interface Span {
  readonly from: number
  readonly to: number
}

/** Those of the two lanes: at the left or the top of the sheet, and at the right or its foot. */
export interface Spans {
  readonly before: Span
  readonly after: Span
}

/** What reaches further than this past the edge of the case may stand in a lane's way, in px: less than lanes begin from it. */
const spare = 4
/** Between what stands beyond an end of the case and what stands in a lane, in px. */
const gap = 4

/**
 * The spans of the lanes along a case. The names of its ends take the middle of the sheet's other way: past the edges of
 * a case that is thinner than they are they would stand in the lanes, which then run only from one to the other. `whole` is
 * the span of a lane that nothing stands in the way of, `edges` are where the lanes are counted from, all in mm.
 */
export function laneSpans(
  whole: Span,
  edges: { readonly before: number; readonly after: number },
  body: Box,
  ends: readonly Shape[],
  lying: boolean,
  px: number,
): Spans {
  const middle = lying ? body.left + body.width / 2 : body.top + body.height / 2
  const boxes = ends.map(boxOfEnd).map(({ left, top, width, height }) => {
    const [across, down] = [
      { from: left, to: left + width },
      { from: top, to: top + height },
    ]
    return lying ? { along: across, aside: down } : { along: down, aside: across }
  })
  const between = (inTheWay: (aside: Span) => boolean): Span => {
    const own = boxes.flatMap(({ along, aside }) => (inTheWay(aside) ? [along] : []))
    return {
      from: Math.max(whole.from, ...own.flatMap(({ to }) => (to < middle ? [to + gap * px] : []))),
      to: Math.min(whole.to, ...own.flatMap(({ from }) => (from > middle ? [from - gap * px] : []))),
    }
  }
  return {
    before: between(({ from }) => from < edges.before - spare * px),
    after: between(({ to }) => to > edges.after + spare * px),
  }
}

function boxOfEnd(shape: Shape): Box {
  if (shape.kind === 'text') return textBox(shape)
  if (shape.kind !== 'line') throw new RangeError(`${shape.id} is no name of an end, nor its arrow`)
  const { points } = shape
  return boxAround(points.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: points[index + 1]! }] : [])))
}
