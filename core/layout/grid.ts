import type { Drawing } from './drawing.ts'
import type { LineShape } from './scene/scene.ts'

/** Sides of a square that are easily counted, in mm. */
const sides = [5, 10, 20, 50, 100, 200, 500]
/** A square is no smaller than this, in px. */
const least = 36

/** The squares of drafting paper, counted from the nose and from the crank axis, so that sizes can be read off them: stretched as the engine is. */
export function gridShapes({ frame, px, stretch, along }: Drawing): readonly LineShape[] {
  const side = sides.find((each) => each >= least * px)
  if (side === undefined) return []
  const right = frame.left + frame.width
  const bottom = frame.top + frame.height
  const line = (id: string, points: readonly number[]): LineShape => ({
    kind: 'line',
    id: `grid/${id}`,
    layer: 'ground',
    role: 'grid',
    points,
    closed: false,
  })
  return [
    ...steps(frame.left, right, along.x === 0 ? side * stretch : side).map((x, index) =>
      line(`x${index}`, [x, frame.top, x, bottom]),
    ),
    ...steps(frame.top, bottom, along.x === 0 ? side : side * stretch).map((y, index) =>
      line(`y${index}`, [frame.left, y, right, y]),
    ),
  ]
}

function steps(from: number, to: number, side: number): readonly number[] {
  const first = Math.ceil(from / side)
  return Array.from({ length: Math.floor(to / side) - first + 1 }, (_, index) => (first + index) * side + 0)
}
