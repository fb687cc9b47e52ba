import { pixelAt, placeOf } from '../../../core/drafts/index.ts'
import type { Drawing } from '../../../core/layout/index.ts'
import type { Point } from '../../../core/plane/index.ts'
import { engineAt, engineDirection } from '../drawing/sheet-place.ts'
import type { PictureWork } from './picture-work.svelte.ts'

/** So many px an arrow key moves the cross; with Shift ten times as far. */
const crossStepPx = 2

/** A press on the drawing while its picture is worked on: it moves the cross, or the picture itself. Null where there is nothing to hold. */
export function grabPicture(work: PictureWork, drawing: Drawing, at: Point): ((to: Point) => void) | null {
  const { lying } = work
  if (lying === null || work.image === null) return null
  if (work.choosing) {
    const put = (to: Point) => work.moveCross(pixelAt(lying, engineAt(drawing, to)))
    put(at)
    return put
  }
  const from = engineAt(drawing, at)
  return (to) => {
    const now = engineAt(drawing, to)
    work.hold({ x: now.x - from.x, y: now.y - from.y })
  }
}

export function releasePicture(work: PictureWork, isMeant: boolean): void {
  if (!work.choosing) void work.letGo(isMeant)
  else if (isMeant) work.setPoint()
}

/** The keys of the same. True where the key meant something. */
export function keyPicture(
  work: PictureWork,
  drawing: Drawing,
  { key, shiftKey }: Pick<KeyboardEvent, 'key' | 'shiftKey'>,
  direction: Point | undefined,
  step: number,
): boolean {
  const { lying, cross } = work
  if (lying === null) return false
  if (cross === null) {
    if (direction === undefined) return false
    const { x, y } = engineDirection(drawing, direction)
    void work.move({ x: x * step, y: y * step })
    return true
  }
  if (key === 'Enter' || key === ' ') work.setPoint()
  else if (key === 'Escape') work.leavePoints()
  else if (direction === undefined) return false
  else {
    const { x, y } = placeOf(lying, cross)
    const on = drawing.place(x / 1e6, y / 1e6)
    const far = crossStepPx * drawing.px * (shiftKey ? 10 : 1)
    work.moveCross(
      pixelAt(lying, engineAt(drawing, { x: on.x + direction.x * far, y: on.y + direction.y * far })),
    )
  }
  return true
}
