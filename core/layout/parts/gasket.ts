import { inMillimetres } from '../../quantity/index.ts'
import type { Drawing } from '../drawing.ts'
import { inside, nearestOn } from '../case/polygon.ts'
import { flat, onSheet } from '../on-sheet.ts'
import type { Point } from '../../plane/index.ts'
import type { LineShape } from '../scene/scene.ts'

/** Between two strokes of the hatching, in px. */
const apart = 7
/** No more strokes than this, however large the sheet. */
const mostStrokes = 600

/** Whether the gasket of the face is on the drawing. */
export function showsGasket({ facts, content, here }: Drawing): boolean {
  return content.gasket && facts.gasket === true && here.face.gasket !== undefined
}

/** The gasket along the edge of its face: a hatched band, as wide as the spec says. */
export function gasketShapes(drawing: Drawing): readonly LineShape[] {
  const { gasket, id } = drawing.here.face
  if (gasket === undefined || !showsGasket(drawing)) return []
  const { outline, px } = drawing
  const width = inMillimetres(gasket.width)
  const outer = alongEdge(outline, apart * px)
  // Where the edge turns in, what is straight in from it would lie nearer to another piece of the edge.
  const inner = outer.map((place) => straightIn(outline, place, width))
  const about = `gasket/${id}`
  const line = (name: string, points: readonly Point[], closed: boolean): LineShape => ({
    ...{ kind: 'line', id: `${about}/${name}`, about, layer: 'ground', role: 'gasket', closed },
    points: flat(onSheet(drawing, points)),
  })
  const hatching = outer.flatMap(({ x, y }, index) => {
    const across = inner[(index + 1) % inner.length]
    return across ? [{ x, y }, across, { x, y }] : [{ x, y }]
  })
  return [
    line('hatching', hatching, true),
    line(
      'inner',
      inner.filter((each) => each !== null),
      true,
    ),
  ]
}

interface Place extends Point {
  /** Along the edge there, of unit length. */
  readonly along: Point
}

/** Places along a closed line, evenly apart on each piece of it. */
function alongEdge(corners: readonly Point[], wished: number): readonly Place[] {
  const pieces = corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length]!
    return { from, to, length: Math.hypot(to.x - from.x, to.y - from.y) }
  })
  const whole = pieces.reduce((sum, { length }) => sum + length, 0)
  const step = Math.max(wished, whole / mostStrokes)
  let next = 0
  return pieces.flatMap(({ from, to, length }) => {
    if (length === 0) return []
    const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
    const places: Place[] = []
    for (; next < length; next += step)
      places.push({ x: from.x + along.x * next, y: from.y + along.y * next, along })
    next -= length
    return places
  })
}

function straightIn(outline: readonly Point[], { x, y, along }: Place, width: number): Point | null {
  const [one, other] = [1, -1].map((side) => ({
    x: x - along.y * side * width,
    y: y + along.x * side * width,
  }))
  const found = [one!, other!].find((each) => inside(outline, each))
  if (found === undefined) return null
  const nearestOnOutline = nearestOn(outline, found, width)
  return nearestOnOutline !== null &&
    Math.hypot(nearestOnOutline.x - found.x, nearestOnOutline.y - found.y) < width * 0.97
    ? null
    : found
}
