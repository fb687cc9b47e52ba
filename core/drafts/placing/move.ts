import type { Point } from '../../plane/index.ts'
import type { Outcome } from '../../problem/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { putAt } from './face.ts'
import type { Thing } from './thing.ts'
import { placedThings } from './things.ts'

/** Moves things by so much along and across, in nanometres. Refuses `draft-off-face`. */
export function moved(document: SpecDocument, things: readonly Thing[], by: Point): Outcome<SpecDocument> {
  return putAt(document, placedThings(document, things), ({ at }) => ({ x: at.x + by.x, y: at.y + by.y }))
}

/** Puts one thing at an exact place. Refuses `draft-off-face`. */
export function movedTo(document: SpecDocument, thing: Thing, at: Point): Outcome<SpecDocument> {
  return putAt(document, placedThings(document, [thing]), () => at)
}
