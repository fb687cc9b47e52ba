import { inMillimetres } from '../quantity/index.ts'
import { middleOf, type Point } from './box.ts'
import { flat, moved, type Drawing } from './drawing.ts'
import type { LineShape, Shape } from './scene.ts'
import { acrossAnEnd } from './view.ts'

/** How far the axis runs beyond the case, in px. */
export const beyond = 24

export interface Ends {
  /** Where the axis leaves the sheet's drawing at the nose and at the drive end. */
  readonly nose: Point
  readonly drive: Point
  /** Whether the crank axis itself lies in the face's part of the sheet. */
  readonly on: boolean
}

/** The crank axis from the nose to the drive end; where it passes beside the face, only its direction is shown. */
export function endsOf(drawing: Drawing): Ends {
  const { body, along, across, sizes } = drawing
  const centre = middleOf(body)
  const offset = centre.x * across.x + centre.y * across.y
  const halfAcross = Math.abs(across.x) * (body.width / 2) + Math.abs(across.y) * (body.height / 2)
  const on = Math.abs(offset) < halfAcross
  const halfAlong = Math.abs(along.x) * (body.width / 2) + Math.abs(along.y) * (body.height / 2)
  const middle = on ? moved(drawing, centre, 0, -offset) : centre
  const reach = halfAlong + beyond * sizes.px
  return { nose: moved(drawing, middle, -reach, 0), drive: moved(drawing, middle, reach, 0), on }
}

export function axisShapes(drawing: Drawing): readonly Shape[] {
  const common = { kind: 'line', layer: 'ground', closed: false } as const
  if (acrossAnEnd(drawing.here.face)) return crossOfAxis(drawing)
  const { px } = drawing.sizes
  const { nose, drive, on } = endsOf(drawing)
  const wing = (side: number): Point => moved(drawing, nose, 17 * px, side * 9.5 * px)
  const stem: LineShape = {
    ...common,
    id: 'axis',
    role: 'axis',
    points: flat([moved(drawing, nose, 17 * px, 0), drive]),
  }
  return [
    ...(on ? [stem] : []),
    ...shaftAxes(drawing),
    ...saddleMarks(drawing),
    {
      ...common,
      id: 'nose',
      about: 'nose',
      role: 'nose',
      points: flat([nose, wing(1), wing(-1)]),
      closed: true,
    },
  ]
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

export function onASide({ here: { face } }: Drawing): boolean {
  return face.plane === 'plus-side' || face.plane === 'minus-side'
}

/** Looked at along the crank, the axis is a point: two centre lines cross there, and the crank's bore lies behind. */
function crossOfAxis(drawing: Drawing): readonly Shape[] {
  const { body, sizes, spec } = drawing
  const { saddles } = spec.case
  const nearest = drawing.here.face.plane === 'nose' ? saddles[0] : saddles.at(-1)
  const reach = (Math.min(body.width, body.height) / 2) * 0.9 + 8 * sizes.px
  const origin = drawing.place(0, 0)
  const cross = ([1, 0] as const).map((way): LineShape => ({
    kind: 'line',
    id: `axis/${way + 1}`,
    layer: 'ground',
    role: 'axis',
    points: flat([
      moved(drawing, origin, reach * way, reach * (1 - way)),
      moved(drawing, origin, -reach * way, -reach * (1 - way)),
    ]),
    closed: false,
  }))
  const radius = nearest === undefined ? 0 : inMillimetres(nearest.diameter) / 2
  return [...cross, { kind: 'circle', id: 'crank-bore', layer: 'ground', role: 'bore', ...origin, radius }]
}
