import type { Drawing } from '../../../core/layout/index.ts'
import type { Point } from '../../../core/plane/index.ts'

/** A place of the sheet, in mm, as the place in the engine's own frame that is drawn there, in whole nanometres. */
export function engineAt({ place }: Pick<Drawing, 'place'>, { x, y }: Point): Point {
  const origin = place(0, 0)
  const mm = inverted(place, { x: x - origin.x, y: y - origin.y })
  return { x: nanometresOf(mm.x), y: nanometresOf(mm.y) }
}

/** A direction of the sheet, one step of it, as the direction in the engine's own frame: along or across it, never both. */
export function engineDirection({ place }: Pick<Drawing, 'place'>, direction: Point): Point {
  const { x, y } = inverted(place, direction)
  return { x: Math.sign(Math.round(x * 1000)) + 0, y: Math.sign(Math.round(y * 1000)) + 0 }
}

/** A drawing maps along and across onto the two sides of the sheet, turned or stretched. */
function inverted(place: Drawing['place'], { x, y }: Point): Point {
  const origin = place(0, 0)
  const [along, across] = [place(1, 0), place(0, 1)].map((end) => ({
    x: end.x - origin.x,
    y: end.y - origin.y,
  }))
  const [a, b, c, d] = [along!.x, across!.x, along!.y, across!.y]
  const area = a * d - b * c
  return { x: (d * x - b * y) / area, y: (a * y - c * x) / area }
}

const nanometresOf = (mm: number) => Math.round(mm * 1e6) + 0
