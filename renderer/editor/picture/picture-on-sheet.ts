import { placeOf, type PicturePlacement } from '../../../core/drafts/index.ts'
import type { Drawing, Shape } from '../../../core/layout/index.ts'
import type { Point } from '../../../core/plane/index.ts'
import type { Backdrop } from '../../canvas/backdrop.ts'
import { engineAt } from '../drawing/sheet-place.ts'
import type { Ground } from './picture-work.svelte.ts'

/** What a picture is placed on, read off a drawing. */
export function groundOf(drawing: Drawing): Ground {
  const { frame } = drawing
  const middle = frame.top + frame.height / 2
  const [along, across] = stepsOf(drawing)
  return {
    mirrored: along.x * across.y - along.y * across.x < 0,
    left: engineAt(drawing, { x: frame.left + frame.width * 0.1, y: middle }),
    right: engineAt(drawing, { x: frame.left + frame.width * 0.9, y: middle }),
  }
}

export function backdropOn(
  drawing: Drawing,
  lying: PicturePlacement,
  image: ImageBitmap,
  opacity: number,
): Backdrop {
  const [along, across] = stepsOf(drawing)
  const onSheet = (x: number, y: number) => ({
    x: (along.x * x + across.x * y) / 1e6,
    y: (along.y * x + across.y * y) / 1e6,
  })
  const [right, down] = [onSheet(lying.a, lying.b), onSheet(lying.c, lying.d)]
  const corner = drawing.place(lying.e / 1e6, lying.f / 1e6)
  return { image, matrix: [right.x, right.y, down.x, down.y, corner.x, corner.y], opacity: opacity / 100 }
}

/** The points that were chosen on the picture, with their numbers, and the cross that the next one comes from. */
export function pointMarks(
  drawing: Drawing,
  lying: PicturePlacement,
  points: readonly Point[],
  cross: Point | null,
): readonly Shape[] {
  const { px, frame } = drawing
  const overlay = { layer: 'overlay' } as const
  const onSheet = (point: Point) => {
    const { x, y } = placeOf(lying, point)
    return drawing.place(x / 1e6, y / 1e6)
  }
  const marks = points.flatMap((point, index): readonly Shape[] => {
    const at = onSheet(point)
    const text = String(index + 1)
    return [
      { ...overlay, id: `picture/${text}`, kind: 'circle', role: 'next', ...at, radius: 5 * px },
      {
        ...{ ...overlay, id: `picture/${text}/number`, kind: 'text', role: 'label', text, anchor: 'start' },
        ...{ x: at.x + 9 * px, y: at.y - 9 * px, capital: 14 * px, weight: 'bold' },
      },
    ]
  })
  if (cross === null) return marks
  const { x, y } = onSheet(cross)
  const line = (id: string, ends: readonly number[]): Shape => ({
    ...{ ...overlay, id, kind: 'line', role: 'crosshair', closed: false },
    points: ends,
  })
  return [
    ...marks,
    line('picture/cross/upright', [x, frame.top, x, frame.top + frame.height]),
    line('picture/cross/level', [frame.left, y, frame.left + frame.width, y]),
  ]
}

/** One step on the sheet along and across, in mm for a mm. */
function stepsOf({ place }: Drawing): readonly [Point, Point] {
  const origin = place(0, 0)
  const [along, across] = [place(1, 0), place(0, 1)].map((end) => ({
    x: end.x - origin.x,
    y: end.y - origin.y,
  }))
  return [along!, across!]
}
