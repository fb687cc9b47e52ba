import { inMillimetres } from '../../quantity/index.ts'
import { axisAt } from './axis-place.ts'
import type { Drawing } from '../drawing.ts'
import { flat, moved } from '../on-sheet.ts'
import type { Point } from '../../plane/index.ts'
import type { LineShape, Shape } from '../scene/scene.ts'
import { acrossAnEnd } from '../view.ts'

/** How far the axis runs beyond the case, in px. */
const beyond = 7

/** The crank axis from the nose to the drive end; none where it passes beside the face. */
export function axisShapes(drawing: Drawing): readonly Shape[] {
  if (acrossAnEnd(drawing.here.face)) return crossOfAxis(drawing)
  const { px, body, along } = drawing
  const lying = along.x !== 0
  const [from, to] = lying
    ? [body.left - beyond * px, body.left + body.width + beyond * px]
    : [body.top - beyond * px, body.top + body.height + beyond * px]
  const stem: LineShape = {
    ...{ kind: 'line', id: 'axis', layer: 'ground', role: 'axis', closed: false },
    points: lying ? [from, 0, to, 0] : [0, from, 0, to],
  }
  return [...(axisAt(drawing) === null ? [] : [stem]), ...shaftAxes(drawing), ...saddleMarks(drawing)]
}

/** The axes of shafts beside the crank, through their bearings. */
function shaftAxes(drawing: Drawing): readonly LineShape[] {
  const { bearings } = drawing.here
  return [...new Set(bearings.map(({ y }) => y))]
    .filter((y) => y !== 0)
    .map((y, index) => {
      const ends = bearings
        .filter((bearing) => bearing.y === y)
        .flatMap(({ x, width }) => [x - width, x + width])
      const points = flat([drawing.place(Math.min(...ends), y), drawing.place(Math.max(...ends), y)])
      return {
        kind: 'line',
        id: `axis/shaft/${index + 1}`,
        layer: 'ground',
        role: 'axis',
        points,
        closed: false,
      }
    })
}

/** On a side of the case, where the saddles lie behind it: a centre line across the axis for each. */
function saddleMarks(drawing: Drawing): readonly LineShape[] {
  if (!onASide(drawing)) return []
  return drawing.spec.case.saddles.map(({ id, at, diameter }) => {
    const x = inMillimetres(at)
    const reach = inMillimetres(diameter) / 2
    const points = flat([drawing.place(x, reach), drawing.place(x, -reach)])
    return { kind: 'line', id: `saddle/${id}/mark`, layer: 'ground', role: 'axis', points, closed: false }
  })
}

function onASide({ here: { face } }: Drawing): boolean {
  return face.plane === 'plus-side' || face.plane === 'minus-side'
}

/** Looked at along the crank, the axis is a point: two centre lines cross there, and the crank's bore lies behind. */
function crossOfAxis(drawing: Drawing): readonly Shape[] {
  const { body, px, spec } = drawing
  const { saddles } = spec.case
  const nearestSaddle = drawing.here.face.plane === 'nose' ? saddles[0] : saddles.at(-1)
  const reach = (Math.min(body.width, body.height) / 2) * 0.9 + 8 * px
  const origin = drawing.place(0, 0)
  const edge = beyond * px
  /** The crank may lie near an edge of the face: its lines end there. */
  const onBody = ({ x, y }: Point): Point => ({
    x: Math.min(Math.max(x, body.left - edge), body.left + body.width + edge),
    y: Math.min(Math.max(y, body.top - edge), body.top + body.height + edge),
  })
  const cross = ([1, 0] as const).map((way): LineShape => ({
    kind: 'line',
    id: `axis/${way + 1}`,
    layer: 'ground',
    role: 'axis',
    points: flat([
      onBody(moved(drawing, origin, reach * way, reach * (1 - way))),
      onBody(moved(drawing, origin, -reach * way, -reach * (1 - way))),
    ]),
    closed: false,
  }))
  const radius = nearestSaddle === undefined ? 0 : inMillimetres(nearestSaddle.diameter) / 2
  return [...cross, { kind: 'circle', id: 'crank-bore', layer: 'ground', role: 'bore', ...origin, radius }]
}
