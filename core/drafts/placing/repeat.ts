import type { Point } from '../../plane/index.ts'
import type { Outcome } from '../../problem/index.ts'
import { withCopies, type DocumentWithCopies } from './copies.ts'
import type { SpecDocument } from '../../engine/index.ts'
import type { Thing } from './thing.ts'

/** `count` of each in all, the first being the one there is, each so far on from the one before. Refuses `draft-off-face`. */
export function repeated(
  document: SpecDocument,
  things: readonly Thing[],
  count: number,
  pitch: Point,
): Outcome<DocumentWithCopies> {
  return withCopies(document, things, ({ at }) =>
    others(count).map((step) => ({ x: at.x + step * pitch.x, y: at.y + step * pitch.y })),
  )
}

/** `count` of each in all, spread evenly on the circle round a centre. Refuses `draft-off-face`. */
export function repeatedRound(
  document: SpecDocument,
  things: readonly Thing[],
  count: number,
  centre: Point,
): Outcome<DocumentWithCopies> {
  return withCopies(document, things, ({ at }) =>
    others(count).map((step) => {
      const angle = (2 * Math.PI * step) / count
      const [x, y] = [at.x - centre.x, at.y - centre.y]
      return {
        x: Math.round(centre.x + x * Math.cos(angle) - y * Math.sin(angle)),
        y: Math.round(centre.y + x * Math.sin(angle) + y * Math.cos(angle)),
      }
    }),
  )
}

function others(count: number): readonly number[] {
  return Array.from({ length: Math.max(0, count - 1) }, (_, index) => index + 1)
}
