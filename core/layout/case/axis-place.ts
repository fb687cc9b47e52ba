import type { Point } from '../../plane/index.ts'
import type { OnFace } from './on-face.ts'
import type { Box } from '../scene/scene.ts'
import type { Projection } from '../view.ts'

/** Where the crank axis passes across the sheet, in mm; null where it passes beside the face. */
export function axisAt({ body, along }: { body: Box; along: Point }): number | null {
  const [from, length] = along.x !== 0 ? [body.top, body.height] : [body.left, body.width]
  return from < 0 && from + length > 0 ? 0 : null
}

/** Where the axis of the face's bearings passes across the sheet, in mm: the crank's, or another shaft's. */
export function bearingsAt({
  here,
  place,
  along,
}: {
  here: OnFace
  place: Projection
  along: Point
}): number {
  const { x, y } = place(0, here.bearings[0]?.y ?? 0)
  return along.x !== 0 ? y : x
}
