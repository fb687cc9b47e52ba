import { axisAt, bearingsAt } from './axis-place.ts'
import { boxAround, type Point } from '../../plane/index.ts'
import type { Disc } from '../labels/discs.ts'
import { endShapes, type EndNames } from '../labels/ends.ts'
import { fastenerLanes, type FastenerLanes, type LaneDepths } from '../labels/fastener-lanes.ts'
import { laneSpans, type Span, type Spans } from '../labels/lane-span.ts'
import type { OnFace } from './on-face.ts'
import type { Boss } from './outline.ts'
import { movedOut } from './overhang.ts'
import type { Box, Shape } from '../scene/scene.ts'
import type { Projection } from '../view.ts'

/** A face in its place on the sheet: what of it is known before what stands along it. */
export interface FaceOnSheet {
  readonly here: OnFace
  readonly outline: readonly Point[]
  readonly bosses: readonly Boss[]
  readonly ends: EndNames
  readonly place: Projection
  readonly along: Point
  readonly across: Point
  /** How far the edge is moved out for the symbols of fasteners, in px. */
  readonly overhang: number
  readonly px: number
}

/** The case with the symbols of its fasteners, and the names of its ends. In mm on the sheet. */
export interface CaseOnSheet {
  readonly discs: readonly Disc[]
  readonly edge: readonly Point[]
  /** What the case takes, its symbols included. */
  readonly body: Box
  readonly endShapes: readonly Shape[]
  readonly lying: boolean
  readonly px: number
}

export function caseOnSheet(laid: FaceOnSheet, discs: readonly Disc[]): CaseOnSheet {
  const { here, outline, bosses, ends, place, along, across, overhang, px } = laid
  const edge = movedOut(
    outline.map(({ x, y }) => place(x, y)),
    overhang * px,
  )
  const extents = discs.flatMap(({ x, y, radius }) => [
    { x: x - radius, y: y - radius },
    { x: x + radius, y: y + radius },
  ])
  const body = boxAround([...edge, ...bosses.map(({ x, y }) => place(x, y)), ...extents])
  const names = endShapes(ends, here.face, {
    ...{ body, along, across, px },
    axisAt: axisAt({ body, along }),
    bearingsAt: bearingsAt({ here, place, along }),
  })
  return { discs, edge, body, endShapes: names, lying: along.x !== 0, px }
}

/** The long edges of the case, moved out by what stands along them already, in px. */
export function longEdges({ body, lying, px }: CaseOnSheet, depths: LaneDepths): LaneDepths {
  const [from, length] = lying ? [body.top, body.height] : [body.left, body.width]
  return { before: from - depths.before * px, after: from + length + depths.after * px }
}

/** Where lanes may run that begin so far from the case, in px, and have this span of the sheet. */
export function spansAlong(onSheet: CaseOnSheet, whole: Span, depths: LaneDepths): Spans {
  const { body, endShapes: names, lying, px } = onSheet
  return laneSpans(whole, longEdges(onSheet, depths), body, names, lying, px)
}

/** The numbers of this face in lanes that have this span of the sheet; null where they do not fit. */
export function discLanes(
  onSheet: CaseOnSheet,
  whole: Span,
): { readonly lanes: FastenerLanes; readonly spans: Spans } | null {
  const { discs, lying, px } = onSheet
  const { left, top, width, height } = boxAround(discs)
  const spans = spansAlong(onSheet, whole, { before: 0, after: 0 })
  const lanes = fastenerLanes(discs, lying, lying ? top + height / 2 : left + width / 2, spans, px)
  return lanes === null ? null : { lanes, spans }
}
