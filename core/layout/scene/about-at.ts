import { boxAround, distanceTo, distanceToSegment, grown, type Point } from '../../plane/index.ts'
import { inside } from '../case/polygon.ts'
import type { Box, LineShape, Role, Scene, Shape, TextShape } from './scene.ts'
import { textWidth } from '../labels/text-width.ts'

/**
 * What lies under a tap at a place of the sheet, in mm: the `about` of the topmost shape there, or of the nearest one
 * within `reach`, so that small things can be hit with a thumb. Null beside everything.
 */
export function aboutAt(scene: Scene, point: Point, reach: number): string | null {
  let best: string | null = null
  let under: string | null = null
  let least = reach
  for (const shape of scene.shapes) {
    if (shape.about === undefined) continue
    const distance = distanceToShape(shape, point)
    if (lyingUnder.has(shape.role)) {
      if (distance === 0) under = shape.about
    } else if (distance <= least) {
      least = distance
      best = shape.about
    }
  }
  return best ?? under
}

/** What a thing covers on the sheet, in mm, without what only points at it or is said of it; null for what is not drawn. */
export function boxAbout(scene: Scene, about: string): Box | null {
  return boxOf(scene.shapes.filter((shape) => shape.about === about))
}

/** The same box by box: the thing itself, and its number by itself where it stands beside a face too full for it; none for what is not drawn. */
export function boxesAbout(scene: Scene, about: string): readonly Box[] {
  const own = scene.shapes.filter((shape) => shape.about === about)
  const apart = own.filter(({ id }) => id === `${about}/lane-disc`)
  const boxes = [boxOf(own.filter((shape) => !apart.includes(shape))), boxOf(apart)]
  return boxes.flatMap((box) => box ?? [])
}

function boxOf(shapes: readonly Shape[]): Box | null {
  const own = shapes.filter((shape) => !isPointing(shape))
  const itself = own.filter(({ kind }) => kind !== 'text')
  const boxes = (itself.length > 0 ? itself : own).map(boxOfShape)
  if (boxes.length === 0) return null
  return boxAround(
    boxes.flatMap(({ left, top, width, height }) => [
      { x: left, y: top },
      { x: left + width, y: top + height },
    ]),
  )
}

/**
 * Where the sheet says what is next or flagged and has to be acted on, in mm: at the part, and in the callout that names it.
 * Nothing may be laid over these.
 */
export function boxesOfNext(scene: Scene): readonly Box[] {
  return scene.shapes.filter(({ layer, role }) => layer === 'overlay' && sayingNext.has(role)).map(boxOfShape)
}

const sayingNext: ReadonlySet<Role> = new Set<Role>([
  ...(['next', 'next-halo', 'next-half', 'flagged', 'checked', 'callout', 'callout-flagged'] as const),
])

/** The cell of the callout has the role of what is next, and stands elsewhere. */
function isPointing({ id, role }: Shape): boolean {
  return pointing.has(role) || id.startsWith('callout')
}

const pointing: ReadonlySet<Role> = new Set<Role>([
  ...([
    'path',
    'path-head',
    'callout',
    'callout-flagged',
    'tick-line',
    'fastener-tick',
    'open-note',
    'measured-note',
  ] as const),
])

/** Wide areas that lie under everything: only a tap that hits nothing else is about them. */
const lyingUnder: ReadonlySet<Role> = new Set<Role>([
  ...(['outline', 'opening', 'bore', 'crank', 'crank-web', 'crank-wheel', 'gasket'] as const),
])

function boxOfShape(shape: Shape): Box {
  switch (shape.kind) {
    case 'circle':
      return grown({ left: shape.x, top: shape.y, width: 0, height: 0 }, shape.radius)
    case 'ring':
      return grown({ left: shape.x, top: shape.y, width: 0, height: 0 }, shape.outer)
    case 'swatch':
      return { left: shape.x, top: shape.y, width: shape.width, height: shape.height }
    case 'text':
      return textBox(shape)
    case 'line':
      return boxAround(cornersOf(shape.points))
    default:
      return shape satisfies never
  }
}

/** From a place to the shape; 0 on it. */
function distanceToShape(shape: Shape, point: Point): number {
  switch (shape.kind) {
    case 'circle':
      return Math.max(0, Math.hypot(point.x - shape.x, point.y - shape.y) - shape.radius)
    case 'ring':
      return Math.max(0, Math.hypot(point.x - shape.x, point.y - shape.y) - shape.outer)
    case 'swatch':
      return distanceTo({ left: shape.x, top: shape.y, width: shape.width, height: shape.height }, point)
    case 'text':
      return distanceTo(textBox(shape), point)
    case 'line':
      return distanceToLine(shape, point)
    default:
      return shape satisfies never
  }
}

function distanceToLine({ points, closed, width = 0 }: LineShape, point: Point): number {
  const corners = cornersOf(points)
  if (closed && inside(corners, point)) return 0
  const pieces = closed ? corners.length : corners.length - 1
  let least = Infinity
  for (let index = 0; index < pieces; index += 1) {
    const from = corners[index]
    const to = corners[(index + 1) % corners.length]
    if (from !== undefined && to !== undefined) least = Math.min(least, distanceToSegment(point, from, to))
  }
  return Math.max(0, least - width / 2)
}

function cornersOf(points: readonly number[]): readonly Point[] {
  const corners: Point[] = []
  for (let index = 0; index + 1 < points.length; index += 2)
    corners.push({ x: points[index] ?? 0, y: points[index + 1] ?? 0 })
  return corners
}

/** What a text covers, from the baseline to the top of its capitals. */
export function textBox({ x, y, text, capital, anchor, weight }: TextShape): Box {
  const width = textWidth(text, capital, weight)
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return { left, top: y - capital / 2, width, height: capital }
}
