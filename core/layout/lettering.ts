import { grown, middleOf, nearestIn, type Point } from './box.ts'
import type { Room } from './room.ts'
import type { Box, Layer, LineShape, Role, Shape, TextShape } from './scene.ts'
import { textWidth } from './text-width.ts'

/** One line of a label. */
export interface Line {
  /** Empty where nothing is said yet and the room is kept. */
  readonly text: string
  readonly capital: number
  readonly weight: TextShape['weight']
  readonly role: Role
  /** The longest text that may come to stand here, so that the label need not move for it. */
  readonly longest?: string
}

/** A label of one or more lines: what it says, and where it would stand, best place first. */
export interface Label {
  readonly id: string
  readonly about?: string
  readonly layer: Layer
  readonly lines: readonly Line[]
  readonly places: readonly Place[]
  /** What its leader line points at, when it must stand elsewhere. Without one it is left out then. */
  readonly target?: Target
}

/** A thing with a leader line: round, or a box when one is given. `clear` is what it takes of the room beyond its edge. */
export interface Target extends Point {
  readonly radius: number
  readonly box?: Box
  readonly clear: number
}

export function boxTarget(box: Box, clear: number): Target {
  return { ...middleOf(box), radius: Math.max(box.width, box.height) / 2, box, clear }
}

/** A point that the label stands beside: it starts there, is centred on it, or ends there. */
export interface Place extends Point {
  readonly anchor: TextShape['anchor']
}

export interface Lettered {
  readonly box: Box
  readonly shapes: readonly (TextShape | LineShape)[]
}

/** Between two lines, and round a label, as shares of the capitals' height. */
const between = 0.62
const around = 0.4

export function labelSize(lines: readonly Line[]): { readonly width: number; readonly height: number } {
  const tallest = Math.max(...lines.map(({ capital }) => capital))
  const widths = lines.map(({ text, longest, capital, weight }) =>
    Math.max(textWidth(text, capital, weight), textWidth(longest ?? '', capital, weight)),
  )
  const height = lines.reduce((sum, { capital }, index) => sum + capital * (index === 0 ? 1 : 1 + between), 0)
  return { width: Math.max(...widths) + 2 * around * tallest, height: height + 2 * around * tallest }
}

export function labelBox(lines: readonly Line[], { x, y, anchor }: Place): Box {
  const { width, height } = labelSize(lines)
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return { left, top: y - height / 2, width, height }
}

/** Beside a point, in a direction along one of the sheet's sides. */
export function beside({ x, y }: Point, direction: Point, lines: readonly Line[]): Place {
  const { height } = labelSize(lines)
  if (direction.x > 0) return { x, y, anchor: 'start' }
  if (direction.x < 0) return { x, y, anchor: 'end' }
  return { x, y: y + (direction.y * height) / 2, anchor: 'middle' }
}

/**
 * The label at the cheapest free one of its places; else at the nearest free place round its target, with a leader line.
 * Null when there is none, or when it has no target.
 */
export function letter(label: Label, room: Room): Lettered | null {
  const best = cheapest(label, room)
  if (best !== null) return standing(label, best)
  if (label.target === undefined) return null
  const far = nearestFree(label.lines, label.target, room)
  return far === null ? null : standing(label, far, leaderTo(label, far))
}

/** Each label in turn, none where another one stands. */
export function letterAll(labels: readonly Label[], room: Room): readonly Shape[] {
  return labels.flatMap((label) => {
    const lettered = letter(label, room)
    if (lettered === null) return []
    room.takeBox(lettered.box)
    return lettered.shapes
  })
}

function cheapest({ lines, places }: Label, room: Room): Place | null {
  let best: Place | null = null
  let least = Infinity
  places.forEach((place, rank) => {
    const box = labelBox(lines, place)
    if (rank >= least || !room.free(box)) return
    const cost = room.cost(box) + rank
    if (cost >= least) return
    least = cost
    best = place
  })
  return best
}

/** Where round a target a place is looked for: 24 directions, the right first. */
const directions = Array.from({ length: 24 }, (_, turn) => ({
  x: Math.cos((turn / 24) * 2 * Math.PI),
  y: Math.sin((turn / 24) * 2 * Math.PI),
}))
/** How many rings further out are looked at for a place that covers less. */
const ringsBeyond = 3

/**
 * Rings of places round a target, outwards and further apart the further out: the cheapest free place of the first rings
 * that have one. Where every leader line would cross something, one that does is better than no label.
 */
export function nearestFree(lines: readonly Line[], target: Target, room: Room): Place | null {
  const { width, height } = labelSize(lines)
  const { frame } = room
  const end = Math.hypot(frame.width, frame.height)
  const across = { from: frame.left, to: frame.left + frame.width }
  const down = { from: frame.top, to: frame.top + frame.height }
  let best: Place | null = null
  let least = Infinity
  let blocked: Place | null = null
  let last = end
  for (let gap = height * 0.4, ring = 0; gap < last; gap += Math.max(height * 0.5, gap * 0.15), ring += 1) {
    for (const direction of directions) {
      const wished = target.x + (target.radius + gap + width / 2) * direction.x
      const wishedDown = target.y + (target.radius + gap + height / 2) * direction.y
      // What would stand over the frame's edge is moved inwards: along it there is often a strip of just the right height.
      const x = held(wished, across, width)
      const y = held(wishedDown, down, height)
      if (Math.abs(x - wished) > width || Math.abs(y - wishedDown) > height) continue
      const box = { left: x - width / 2, top: y - height / 2, width, height }
      if (!room.free(box)) continue
      const cost = ring + room.cost(box)
      if (cost >= least) continue
      const place: Place = { x, y, anchor: 'middle' }
      if (!leaderPasses(target, box, room)) {
        blocked ??= place
        continue
      }
      if (best === null) last = Math.min(last, gap + ringsBeyond * height * 0.5)
      least = cost
      best = place
    }
  }
  return best ?? blocked
}

/** The middle of a length, moved so that all of the length lies in the span. */
function held(middle: number, { from, to }: { from: number; to: number }, length: number): number {
  return Math.max(Math.min(middle, to - length / 2), from + length / 2)
}

/** Whether the leader line from the target to a label's box passes every other thing and every other leader. */
export function leaderPasses(target: Target, box: Box, room: Room): boolean {
  const leader = leaderOf(target, box)
  return room.passes(...clearOf(target, leader)) && !room.crossesLeader(...leader)
}

/** From the edge of the target to the nearest point of the label's box. */
export function leaderOf(target: Target, box: Box): readonly [Point, Point] {
  const end = nearestIn(box, target)
  return [target.box === undefined ? onWay(target, end, target.radius) : onEdge(target.box, end), end]
}

/** The point of the box's edge towards another, never at a corner, where it could belong to a neighbour. */
function onEdge(box: Box, towards: Point): Point {
  const edge = nearestIn(box, towards)
  const middle = nearestIn(grown(box, -0.3 * Math.min(box.width, box.height)), towards)
  return edge.y === towards.y ? { x: edge.x, y: middle.y } : { x: middle.x, y: edge.y }
}

/** The leader without its beginning, where it passes through the room that its own target takes. */
function clearOf({ clear }: Target, [from, to]: readonly [Point, Point]): readonly [Point, Point] {
  return [onWay(from, to, clear * 1.5), to]
}

function onWay(from: Point, to: Point, by: number): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const share = length === 0 ? 0 : Math.min(1, by / length)
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
}

function leaderTo({ id, about, layer, lines, target }: Label, place: Place): readonly LineShape[] {
  if (target === undefined) return []
  const tallest = Math.max(...lines.map(({ capital }) => capital))
  const [from, to] = leaderOf(target, grown(labelBox(lines, place), -around * 0.7 * tallest))
  return [
    {
      kind: 'line',
      id: `${id}/leader`,
      ...(about === undefined ? {} : { about }),
      layer,
      role: 'label-leader',
      points: [from.x, from.y, to.x, to.y],
      closed: false,
    },
  ]
}

function standing(label: Label, place: Place, leader: readonly LineShape[] = []): Lettered {
  const box = labelBox(label.lines, place)
  const tallest = Math.max(...label.lines.map(({ capital }) => capital))
  const pad = around * tallest
  const x =
    place.anchor === 'start'
      ? box.left + pad
      : place.anchor === 'end'
        ? box.left + box.width - pad
        : middleOf(box).x
  let top = box.top + pad
  const texts = label.lines.flatMap((line, index): readonly TextShape[] => {
    if (index > 0) top += line.capital * between
    const y = top + line.capital / 2
    top += line.capital
    if (line.text === '') return []
    return [
      {
        kind: 'text',
        id: index === 0 ? label.id : `${label.id}/${index + 1}`,
        ...(label.about === undefined ? {} : { about: label.about }),
        layer: label.layer,
        role: line.role,
        x,
        y,
        text: line.text,
        capital: line.capital,
        anchor: place.anchor,
        weight: line.weight,
      },
    ]
  })
  return { box, shapes: [...leader, ...texts] }
}
