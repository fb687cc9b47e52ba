import { middleOf, type Point } from './box.ts'
import { flat, moved, type Drawing } from './drawing.ts'
import type { Label, Place } from './lettering.ts'
import { labelSize, type Line } from './lettering.ts'
import type { LineShape, Shape } from './scene.ts'
import { acrossAnEnd, viewInWords } from './view.ts'

/** How far the axis runs beyond the case, in px. */
const beyond = 30

interface Ends {
  /** Where the axis leaves the sheet's drawing at the nose and at the drive end. */
  readonly nose: Point
  readonly drive: Point
  /** Whether the crank axis itself lies in the face's part of the sheet. */
  readonly on: boolean
}

/** The crank axis from the nose to the drive end; where it passes beside the face, only its direction is shown. */
function endsOf(drawing: Drawing): Ends {
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
    { ...common, id: 'nose', role: 'nose', points: flat([nose, wing(1), wing(-1)]), closed: true },
  ]
}

/** Looked at along the crank, the axis is a point: two centre lines cross there. */
function crossOfAxis(drawing: Drawing): readonly LineShape[] {
  const { body, sizes } = drawing
  const reach = (Math.min(body.width, body.height) / 2) * 0.9 + 8 * sizes.px
  const origin = drawing.place(0, 0)
  return ([1, 0] as const).map((way) => ({
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
}

/** NOSE and DRIVE END at the ends of the axis, and what is seen from where in the corner of the sheet. */
export function signs(drawing: Drawing): readonly Label[] {
  const { sizes, spec, here, view, room } = drawing
  const name = { capital: sizes.name, weight: 'bold', role: 'label' } as const
  const sign: Line = { ...name, weight: 'regular', text: viewInWords(spec.case, here.face, view) }
  const pad = labelSize([sign]).height / 2
  const corner: Label = {
    id: 'sign',
    about: `face/${here.face.id}`,
    layer: 'ground',
    lines: [sign],
    places: [{ x: room.frame.left, y: room.frame.top + pad, anchor: 'start' }],
  }
  if (acrossAnEnd(here.face)) return [corner]
  const { nose, drive } = endsOf(drawing)
  const end = (id: string, texts: readonly string[], point: Point, outwards: 1 | -1): Label => {
    const lines = texts.map((text): Line => ({ ...name, text }))
    const places = besides(drawing, point, outwards, lines)
    return { id, layer: 'ground', lines, places, target: { ...point, radius: 0, clear: 0 } }
  }
  return [corner, end('nose/name', ['NOSE'], nose, -1), end('drive/name', ['DRIVE', 'END'], drive, 1)]
}

/** Places on either side of the axis, just outside the case. */
function besides(drawing: Drawing, end: Point, outwards: 1 | -1, lines: readonly Line[]): readonly Place[] {
  const { along, across, sizes } = drawing
  const { width, height } = labelSize(lines)
  const lying = along.x !== 0
  const edge = moved(drawing, end, outwards * -(beyond - 5) * sizes.px, 0)
  const out = outwards * ((lying ? width : height) / 2)
  // Above the axis first, or right of it.
  const up = lying ? -across.y : across.x
  const aside = up * (11 * sizes.px + (lying ? height : width) / 2)
  const further = [0, 0.5, 1, 1.5].map((share) => share * outwards * height)
  return [
    ...further.flatMap((more) =>
      [1, -1].map((side): Place => ({ ...moved(drawing, edge, out + more, aside * side), anchor: 'middle' })),
    ),
    { ...moved(drawing, end, out + 3 * outwards * sizes.px, 0), anchor: 'middle' },
  ]
}
