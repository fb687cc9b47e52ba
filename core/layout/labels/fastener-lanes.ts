import type { Point } from '../../plane/index.ts'
import { leastRadius, type Disc } from './discs.ts'
import type { Span, Spans } from './lane-span.ts'
import { leastCapital } from '../sizes.ts'

/** A number in a lane along an edge of the case, for a face too full to have it at its fastener. In mm on the sheet. */
export interface LaneDisc extends Point {
  readonly disc: Disc
  readonly radius: number
  readonly capital: number
  /** From the fastener to its number. */
  readonly tick: readonly Point[]
}

/** What the lanes take beyond the edges of the case, in px: before and after it on the sheet. */
export interface LaneDepths {
  readonly before: number
  readonly after: number
}

/** What either asks for: the first itself where that is not more. */
export function deeperLane(one: LaneDepths, other: LaneDepths): LaneDepths {
  if (other.before <= one.before && other.after <= one.after) return one
  return { before: Math.max(one.before, other.before), after: Math.max(one.after, other.after) }
}

/** From the edge to the first row, between rows, and beyond the last one, in px. */
const toFirst = 8
const between = 3
const beyond = 4
const mostRows = 2

interface Edge {
  readonly discs: readonly Disc[]
  readonly rows: number
}

/** The numbers of a face in lanes along its two long edges. */
export interface FastenerLanes {
  readonly before: Edge
  readonly after: Edge
  /** Of every number, in px. */
  readonly radius: number
  readonly depths: LaneDepths
}

/**
 * Each fastener's number goes to the edge that is nearer to it, in order along the case, in one row or in two that take turns.
 * Null where even two rows cannot hold them: then a number is as large as its fastener's neighbours let it be. `spans` are
 * what the lanes can have along the case, and `middle` divides the face across, in mm.
 */
export function fastenerLanes(
  discs: readonly Disc[],
  lying: boolean,
  middle: number,
  spans: Spans,
  px: number,
): FastenerLanes | null {
  const across = ({ x, y }: Point): number => (lying ? y : x)
  const along = ({ x, y }: Point): number => (lying ? x : y)
  const longestNumber = discs.reduce((one, { number }) => (number.length > one.length ? number : one), '0')
  const radius = leastRadius(longestNumber)
  const edge = (own: readonly Disc[], { from, to }: Span): Edge => {
    const inOrder = own.toSorted((one, other) => along(one) - along(other) || across(one) - across(other))
    const inOneRow = inOrder.length * (2 * radius + between) * px <= to - from
    return { discs: inOrder, rows: inOneRow ? 1 : mostRows }
  }
  const before = edge(
    discs.filter((disc) => across(disc) < middle),
    spans.before,
  )
  const after = edge(
    discs.filter((disc) => across(disc) >= middle),
    spans.after,
  )
  const holds = ({ discs: own, rows }: Edge, { from, to }: Span): boolean =>
    (own.length - 1) * pitch(radius, rows) * px <= to - from - 2 * radius * px
  if (!holds(before, spans.before) || !holds(after, spans.after)) return null
  const depth = ({ discs: own, rows }: Edge): number =>
    own.length === 0 ? 0 : toFirst + rows * (2 * radius + between) + beyond
  return { before, after, radius, depths: { before: depth(before), after: depth(after) } }
}

/** From one number to the next along the case, in px: in two rows, so that a tick passes between two of the first. */
function pitch(radius: number, rows: number): number {
  return rows === 1 ? 2 * radius + between : radius + between / 2 + 0.5
}

/** The numbers in their places. `edges` are those of the case, `spans` what each lane can have, in mm. */
export function placedInLanes(
  lanes: FastenerLanes,
  lying: boolean,
  edges: { readonly before: number; readonly after: number },
  spans: Spans,
  px: number,
): readonly LaneDisc[] {
  return (['before', 'after'] as const).flatMap((side) => {
    const { discs, rows } = lanes[side]
    const outwards = side === 'before' ? -1 : 1
    const radius = lanes.radius * px
    const apart = pitch(lanes.radius, rows) * px
    const wished = discs.map(({ x, y }) => (lying ? x : y))
    const slots = spacedOut(wished, apart, spans[side].from + radius, spans[side].to - radius)
    return discs.map((disc, index): LaneDisc => {
      const row = index % rows
      const off = (toFirst + (2 * lanes.radius + between) * row + lanes.radius) * px
      const at = (along: number, across: number): Point =>
        lying ? { x: along, y: across } : { x: across, y: along }
      const slot = slots[index]!
      const middle = at(slot, edges[side] + outwards * off)
      const elbow = at(slot, edges[side] + outwards * 3 * px)
      const rim = at(slot, edges[side] + outwards * (off - radius))
      return { ...middle, disc, radius, capital: leastCapital * px, tick: [disc, elbow, rim] }
    })
  })
}

/**
 * Places in order, at least so far apart and each as near to where it was wished as that lets it be (the least squares: an
 * isotonic regression by pooling what would overtake), within two ends.
 */
function spacedOut(wished: readonly number[], apart: number, least: number, most: number): readonly number[] {
  const pools: { sum: number; count: number }[] = []
  wished.forEach((place, index) => {
    pools.push({ sum: place - index * apart, count: 1 })
    for (
      let last = pools.at(-1)!, before = pools.at(-2);
      before !== undefined;
      last = pools.at(-1)!, before = pools.at(-2)
    ) {
      if (before.sum / before.count <= last.sum / last.count) break
      pools.pop()
      before.sum += last.sum
      before.count += last.count
    }
  })
  const last = Math.max(least, most - (wished.length - 1) * apart)
  const level = pools.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
  return level.map((place, index) => Math.min(Math.max(place, least), last) + index * apart)
}
