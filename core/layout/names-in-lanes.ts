import { spansAlong, type CaseOnSheet } from './case/case-on-sheet.ts'
import type { LaneDepths } from './labels/fastener-lanes.ts'
import { laneOf, type Lane, type LaneLabel } from './labels/lane.ts'
import type { Span } from './labels/lane-span.ts'
import type { LaneName } from './labels/lane-name.ts'
import type { Box } from './scene/scene.ts'
import type { Projection } from './view.ts'

/** At the left or the top of the sheet, and at the right or its foot. */
export interface LanesOfNames {
  readonly before: Lane
  readonly after: Lane
}

/** A lane takes no more of the sheet than this, unless there are only names in it. */
const mostOfLane = 0.24
/** Names in a lane keep so far from the sheet's edges, in px. */
const edgeOfLane = 2

/** The names in their two lanes along the case. */
export function lanesOn(
  names: readonly LaneName[],
  place: Projection,
  onSheet: CaseOnSheet,
  laneDepths: LaneDepths,
  frame: Box,
): LanesOfNames {
  const { lying, px } = onSheet
  const up = place(0, 1)
  const plusFirst = (lying ? up.y : up.x) < 0
  const isBefore = ({ edge }: LaneName): boolean =>
    edge === 'high' || (edge === 'plus' && plusFirst) || (edge === 'minus' && !plusFirst)
  const labels = (own: readonly LaneName[]): readonly LaneLabel[] =>
    own.map(({ id, about, at, lines }) => {
      const { x, y } = place(at.x, at.y)
      const along = lying ? x - frame.left : y - frame.top
      return { id, at: along / px, lines, ...(about !== undefined && { about }) }
    })
  const [from, length, depth] = lying
    ? [frame.left, frame.width, frame.height]
    : [frame.top, frame.height, frame.width]
  const run = { from: from + edgeOfLane * px, to: from + length - edgeOfLane * px }
  const spans = spansAlong(onSheet, run, laneDepths)
  const lane = (own: readonly LaneName[], span: Span): Lane => {
    const inPx = { from: (span.from - from) / px, to: (span.to - from) / px }
    return laneOf(labels(own), inPx, !lying, (depth / px) * mostOfLane)
  }
  return {
    before: lane(names.filter(isBefore), spans.before),
    after: lane(
      names.filter((name) => !isBefore(name)),
      spans.after,
    ),
  }
}
