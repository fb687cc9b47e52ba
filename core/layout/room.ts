import {
  boxBetween,
  distanceTo,
  distanceToSegment,
  grown,
  holds,
  overlap,
  segmentMeets,
  segmentsCross,
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
  /** Neither a label nor another leader may cross it. */
  takeLeader(from: Point, to: Point): void
  crossAtCost(points: readonly Point[], closed: boolean, cost: number): void
  /** Whether a label may stand there: inside the frame, on nothing that is taken. */
  free(box: Box): boolean
  /** What covering soft lines costs there. */
  cost(box: Box): number
  /** Whether a straight line passes every box and circle. */
  passes(from: Point, to: Point): boolean
  crossesLeader(from: Point, to: Point): boolean
}

type Hard =
  | { readonly kind: 'box'; readonly box: Box }
  | { readonly kind: 'circle'; readonly middle: Point; readonly radius: number }
  | ({ readonly kind: 'edge'; readonly halfWidth: number } & Segment)
  | ({ readonly kind: 'leader' } & Segment)

interface Segment {
  readonly from: Point
  readonly to: Point
}

interface Soft extends Segment {
  readonly cost: number
}

const cellsAcross = 32

/** Things by the cells of the frame that they touch; what lies outside is kept in the cells along the edge. */
function gridOver<Thing>({ left, top, width, height }: Box): {
  add(around: Box, thing: Thing): void
  /** Whether the test holds for any thing near the box; one in several cells may be asked about more than once. */
  some(box: Box, test: (thing: Thing) => boolean): boolean
  /** The same for things near a straight line: only cells that it passes are looked into. */
  someAlong(from: Point, to: Point, test: (thing: Thing) => boolean): boolean
} {
  const cells: Thing[][] = Array.from({ length: cellsAcross * cellsAcross }, () => [])
  const index = (share: number): number =>
    Math.min(Math.max(Math.floor(share * cellsAcross), 0), cellsAcross - 1)
  const some = (box: Box, visit: (cell: Thing[]) => boolean): boolean => {
    const right = index((box.left + box.width - left) / width)
    const bottom = index((box.top + box.height - top) / height)
    for (let row = index((box.top - top) / height); row <= bottom; row += 1)
      for (let column = index((box.left - left) / width); column <= right; column += 1) {
        const cell = cells[row * cellsAcross + column]
        if (cell !== undefined && visit(cell)) return true
      }
    return false
  }
  return {
    add: (around, thing) => void some(around, (cell) => cell.push(thing) < 0),
    some: (box, test) => some(box, (cell) => cell.some(test)),
    someAlong(from, to, test) {
      const { x, y } = { x: to.x - from.x, y: to.y - from.y }
      const pieces = Math.ceil(Math.max(Math.abs(x) / width, Math.abs(y) / height) * cellsAcross) || 1
      const at = (step: number): Point => ({
        x: from.x + (x * step) / pieces,
        y: from.y + (y * step) / pieces,
      })
      for (let step = 0; step < pieces; step += 1)
        if (some(boxBetween(at(step), at(step + 1)), (cell) => cell.some(test))) return true
      return false
    },
  }
}

export function roomIn(frame: Box): Room {
  const hard = gridOver<Hard>(frame)
  const soft = gridOver<Soft>(frame)
  const leaders: Segment[] = []
  const segments = (points: readonly Point[], closed: boolean): readonly Segment[] =>
    points.flatMap((from, index) => {
      const to = points[index + 1] ?? (closed ? points[0] : undefined)
      return to === undefined ? [] : [{ from, to }]
    })
  return {
    frame,
    takeBox: (box) => hard.add(box, { kind: 'box', box }),
    takeCircle: (middle, radius) =>
      hard.add(grown({ left: middle.x, top: middle.y, width: 0, height: 0 }, radius), {
        kind: 'circle',
        middle,
        radius,
      }),
    takeLine(points, closed, halfWidth) {
      for (const { from, to } of segments(points, closed))
        hard.add(grown(boxBetween(from, to), halfWidth), { kind: 'edge', from, to, halfWidth })
    },
    takeLeader(from, to) {
      leaders.push({ from, to })
      hard.add(boxBetween(from, to), { kind: 'leader', from, to })
    },
    crossAtCost(points, closed, cost) {
      for (const { from, to } of segments(points, closed)) soft.add(boxBetween(from, to), { from, to, cost })
    },
    free: (box) => holds(frame, box) && !hard.some(box, (taken) => meets(taken, box)),
    cost(box) {
      const crossed = new Set<Soft>()
      soft.some(box, (line) => {
        if (segmentMeets(box, line.from, line.to)) crossed.add(line)
        return false
      })
      let total = 0
      for (const { cost } of crossed) total += cost
      return total
    },
    passes(from, to) {
      return !hard.someAlong(from, to, (taken) => {
        if (taken.kind === 'box') return segmentMeets(taken.box, from, to)
        return taken.kind === 'circle' && distanceToSegment(taken.middle, from, to) < taken.radius
      })
    },
    crossesLeader: (from, to) => leaders.some((leader) => segmentsCross(leader.from, leader.to, from, to)),
  }
}

function meets(taken: Hard, box: Box): boolean {
  switch (taken.kind) {
    case 'box':
      return overlap(taken.box, box)
    case 'circle':
      return distanceTo(box, taken.middle) < taken.radius
    case 'edge':
      return segmentMeets(grown(box, taken.halfWidth), taken.from, taken.to)
    case 'leader':
      return segmentMeets(box, taken.from, taken.to)
    default:
      return taken satisfies never
  }
}
