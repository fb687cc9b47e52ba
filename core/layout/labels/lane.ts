import type { Point } from '../../plane/index.ts'
import type { Span } from './lane-span.ts'
import { cutOff, inARow, inRoom, rowSize, stackSize, stacked, type Line } from './label.ts'
import type { Box, Shape } from '../scene/scene.ts'
import { leastCapital } from '../sizes.ts'

/** A name in a lane: what it says, and the place along the lane that its tick goes to, in px. */
export interface LaneLabel {
  readonly id: string
  readonly about?: string
  readonly at: number
  /** The name first: what else there is goes where there is no room for it. */
  readonly lines: readonly Line[]
}

/** A label in its place: from and to along the lane, and the row it stands in, counted from the case. In px. */
export interface PlacedLabel {
  readonly label: LaneLabel
  readonly lines: readonly Line[]
  readonly from: number
  readonly to: number
  readonly row: number
}

/** Names in order along an edge of the case. */
export interface Lane {
  readonly placed: readonly PlacedLabel[]
  /** From the edge of the case, in px; 0 for an empty one. */
  readonly depth: number
  readonly rowDepth: number
  readonly writing: LineArrangement
}

/** How the lines of a label stand: one after another, or one under the other. */
type LineArrangement = 'row' | 'stack'

/** From the case to the first row, and round each label, in px. */
const tickLength = 9
const gap = 7
const betweenRows = 6
const afterLane = 3
const mostRows = 3
/** Of places that were calculated twice, in px. */
const slack = 1e-6

/**
 * The labels in as few rows as hold them: every label under its own place, rows dealt out in turn, and no tick through the
 * label of another. Where that does not go, or goes deeper than `mostDepth` px, letters are smaller, then the names are left
 * alone; one that has no room even then is left out. `standing` lanes run down the sheet, with the lines of a label one after
 * another, or broken and one under the other where that would be too deep; in the others a line longer than the lane is cut off.
 * `span` is the part of the sheet's side that labels keep to, in px.
 */
export function laneOf(
  labels: readonly LaneLabel[],
  span: Span,
  standing: boolean,
  mostDepth = Infinity,
): Lane {
  const inOrder = labels.toSorted((one, other) => one.at - other.at)
  if (inOrder.length === 0) return { placed: [], depth: 0, rowDepth: 0, writing: 'stack' }
  for (const bare of [false, true])
    for (const writing of standing ? (['row', 'stack'] as const) : (['stack'] as const))
      for (const { rows, share } of attempts) {
        const form = { rows, share, bare, writing, standing, span, mostDepth }
        const lane = laneWith(placedIn(inOrder, form), writing, standing)
        if (((bare && !standing) || lane.depth <= mostDepth) && fit(lane.placed, span)) return lane
      }
  const placed: PlacedLabel[] = []
  const last = { rows: standing ? 1 : mostRows, share: 0, bare: true, standing, span, mostDepth } as const
  for (const each of placedIn(inOrder, { ...last, writing: 'stack' }))
    if (fit([...placed, each], span)) placed.push(each)
  return laneWith(placed, 'stack', standing)
}

const attempts = [
  { rows: 1, share: 1 },
  { rows: 1, share: 0.85 },
  { rows: 2, share: 1 },
  { rows: 2, share: 0.85 },
  { rows: 1, share: 0 },
  { rows: 2, share: 0 },
  { rows: mostRows, share: 0.85 },
  { rows: mostRows, share: 0 },
] as const

interface Attempt {
  readonly rows: number
  /** Of the size that the letters would have. */
  readonly share: number
  readonly bare: boolean
  readonly writing: LineArrangement
  readonly standing: boolean
  readonly span: Span
  readonly mostDepth: number
}

function placedIn(
  labels: readonly LaneLabel[],
  { rows, share, bare, writing, standing, span, mostDepth }: Attempt,
): readonly PlacedLabel[] {
  const room = (mostDepth - tickLength - afterLane) / rows - betweenRows
  return labels.map((label, index): PlacedLabel => {
    const kept = bare ? label.lines.slice(0, 1) : label.lines
    const smaller = kept.map((line) => ({ ...line, capital: Math.max(line.capital * share, leastCapital) }))
    const lines = standing
      ? writing === 'stack'
        ? smaller.flatMap((line) => inRoom(line, room))
        : smaller
      : smaller.map((line) => cutOff(line, span.to - span.from))
    const { width, height } = sizeOf(lines, writing)
    const size = standing ? height : width
    const from = Math.max(span.from, Math.min(label.at - size / 2, span.to - size))
    return { label, lines, from, to: from + size, row: index % rows }
  })
}

function sizeOf(
  lines: readonly Line[],
  writing: LineArrangement,
): { readonly width: number; readonly height: number } {
  return writing === 'row' ? rowSize(lines) : stackSize(lines)
}

function fit(placed: readonly PlacedLabel[], span: Span): boolean {
  return placed.every(
    (one, index) => one.to <= span.to + slack && placed.slice(index + 1).every((other) => passes(one, other)),
  )
}

function passes(one: PlacedLabel, other: PlacedLabel): boolean {
  if (one.row === other.row) return one.to + gap <= other.from || other.to + gap <= one.from
  const [near, far] = one.row < other.row ? [one, other] : [other, one]
  return far.label.at <= near.from - 2 || far.label.at >= near.to + 2
}

function laneWith(placed: readonly PlacedLabel[], writing: LineArrangement, standing: boolean): Lane {
  if (placed.length === 0) return { placed, depth: 0, rowDepth: 0, writing }
  const rows = Math.max(...placed.map(({ row }) => row)) + 1
  const depths = placed.map(({ lines }) => sizeOf(lines, writing)[standing ? 'width' : 'height'])
  const rowDepth = Math.max(...depths) + betweenRows
  return { placed, depth: tickLength + rows * rowDepth + afterLane, rowDepth, writing }
}

/** Where a lane lies on the sheet. */
export interface LanePlace {
  /** The side of the sheet it is on. */
  readonly side: 'left' | 'top' | 'right' | 'bottom'
  /** The edge of the case on that side, and where the lane's places count from, in mm of the sheet. */
  readonly edge: number
  readonly origin: number
  /** Where a label's tick begins: on the edge of the case or further in, in mm. */
  readonly tickFrom: (label: LaneLabel) => number
  readonly px: number
}

/** The labels of a lane with their ticks. */
export function laneShapes({ placed, rowDepth, writing }: Lane, place: LanePlace): readonly Shape[] {
  const { side, edge, origin, px } = place
  const outwards = side === 'left' || side === 'top' ? -1 : 1
  const lying = side === 'top' || side === 'bottom'
  return placed.flatMap(({ label, lines, from, row }): readonly Shape[] => {
    const { width, height } = sizeOf(lines, writing)
    const near = edge + outwards * (tickLength + row * rowDepth) * px
    const along = origin + from * px
    const depth = (lying ? height : width) * px
    const start = outwards > 0 ? near : near - depth
    const box: Box = lying
      ? { left: along, top: start, width: width * px, height: depth }
      : { left: start, top: along, width: depth, height: height * px }
    const { about } = label
    const common = { id: label.id, layer: 'parts', ...(about !== undefined && { about }) } as const
    const at = origin + label.at * px
    const end = near - outwards * 2.5 * px
    const tick: readonly [Point, Point] = lying
      ? [
          { x: at, y: place.tickFrom(label) },
          { x: at, y: end },
        ]
      : [
          { x: place.tickFrom(label), y: at },
          { x: end, y: at },
        ]
    return [
      {
        ...{ kind: 'line', ...common, id: `${label.id}/tick`, role: 'tick-line', closed: false },
        points: tick.flatMap(({ x, y }) => [x, y]),
      },
      ...(writing === 'row'
        ? inARow(common, lines, box, px)
        : stacked(common, lines, box, lying ? 'middle' : side === 'left' ? 'end' : 'start', px)),
    ]
  })
}
