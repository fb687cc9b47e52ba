import {
  boxBetween,
  distanceTo,
  distanceToSegment,
  grown,
  holds,
  overlap,
  segmentMeets,
  type Point,
} from './box.ts'
import type { Box } from './scene.ts'

/**
 * What is taken on the sheet, so that labels find a free place. Boxes, circles and hard lines may not be covered by a
 * label; soft lines may, at a cost. Kept in a grid of cells, so that a thousand fasteners cost a label no more than ten.
 */
export interface Room {
  readonly frame: Box
  takeBox(box: Box): void
  takeCircle(middle: Point, radius: number): void
  /** `halfWidth` on either side of it is taken too. */
  takeLine(points: readonly Point[], closed: boolean, halfWidth: number): void
  crossAtCost(points: readonly Point[], closed: boolean, cost: number): void
  /** Whether a label may stand there: inside the frame, on nothing that is taken. */
  free(box: Box): boolean
  /** What covering soft lines costs there. */
  cost(box: Box): number
  /** Whether a straight line passes every box and circle. */
  passes(from: Point, to: Point): boolean
}

type Taken =
  | { readonly kind: 'box'; readonly box: Box }
  | { readonly kind: 'circle'; readonly middle: Point; readonly radius: number }
  | {
      readonly kind: 'edge' | 'soft'
      readonly from: Point
      readonly to: Point
      readonly halfWidth: number
      readonly cost: number
    }

const cellsAcross = 24

export function roomIn(frame: Box): Room {
  const cells = new Map<number, Taken[]>()
  const size = Math.max(frame.width, frame.height) / cellsAcross

  function* cellsOf(box: Box): Generator<number> {
    const index = (value: number): number => Math.min(Math.max(Math.floor(value / size), -2), cellsAcross + 2)
    const last = index(box.left + box.width - frame.left)
    const bottom = index(box.top + box.height - frame.top)
    for (let column = index(box.left - frame.left); column <= last; column += 1)
      for (let row = index(box.top - frame.top); row <= bottom; row += 1) yield column * 64 + row
  }
  const take = (around: Box, taken: Taken): void => {
    for (const key of cellsOf(around)) {
      const cell = cells.get(key)
      if (cell === undefined) cells.set(key, [taken])
      else cell.push(taken)
    }
  }
  const near = (box: Box): Set<Taken> => {
    const found = new Set<Taken>()
    for (const key of cellsOf(box)) for (const taken of cells.get(key) ?? []) found.add(taken)
    return found
  }
  const takeSegments = (
    points: readonly Point[],
    closed: boolean,
    line: Pick<Extract<Taken, { kind: 'edge' | 'soft' }>, 'kind' | 'halfWidth' | 'cost'>,
  ): void => {
    points.forEach((from, index) => {
      const to = points[index + 1] ?? (closed ? points[0] : undefined)
      if (to !== undefined) take(grown(boxBetween(from, to), line.halfWidth), { ...line, from, to })
    })
  }

  return {
    frame,
    takeBox: (box) => take(box, { kind: 'box', box }),
    takeCircle: (middle, radius) =>
      take(
        { left: middle.x - radius, top: middle.y - radius, width: 2 * radius, height: 2 * radius },
        { kind: 'circle', middle, radius },
      ),
    takeLine: (points, closed, halfWidth) =>
      takeSegments(points, closed, { kind: 'edge', halfWidth, cost: Infinity }),
    crossAtCost: (points, closed, cost) => takeSegments(points, closed, { kind: 'soft', halfWidth: 0, cost }),
    free(box) {
      if (!holds(frame, box)) return false
      for (const taken of near(box)) if (taken.kind !== 'soft' && meets(taken, box)) return false
      return true
    },
    cost(box) {
      let total = 0
      for (const taken of near(box)) if (taken.kind === 'soft' && meets(taken, box)) total += taken.cost
      return total
    },
    passes(from, to) {
      for (const taken of near(boxBetween(from, to))) {
        if (taken.kind === 'box' && segmentMeets(taken.box, from, to)) return false
        if (taken.kind === 'circle' && distanceToSegment(taken.middle, from, to) < taken.radius) return false
      }
      return true
    },
  }
}

function meets(taken: Taken, box: Box): boolean {
  switch (taken.kind) {
    case 'box':
      return overlap(taken.box, box)
    case 'circle':
      return distanceTo(box, taken.middle) < taken.radius
    case 'edge':
    case 'soft':
      return segmentMeets(grown(box, taken.halfWidth), taken.from, taken.to)
    default:
      return taken satisfies never
  }
}
