import type { Outcome } from '../../problem/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { putAt } from './face.ts'
import type { Thing } from './thing.ts'
import { placedThings } from './things.ts'

/** In a row along the crank, in a column across it, or as far from one another as the outer two leave room for. */
export type Alignment = 'row' | 'column' | 'spread'

/** Aligns things with the first one; two outer ones stay where others are spread between them. Refuses `draft-off-face`. */
export function aligned(
  document: SpecDocument,
  things: readonly Thing[],
  how: Alignment,
): Outcome<SpecDocument> {
  const placed = placedThings(document, things)
  const [first] = placed
  if (how === 'spread') return spread(document, placed)
  return putAt(document, placed, ({ at }) =>
    how === 'row' ? { x: at.x, y: first!.at.y } : { x: first!.at.x, y: at.y },
  )
}

/** Along the longer of both extents; across it each stays as it is. */
function spread(document: SpecDocument, placed: ReturnType<typeof placedThings>): Outcome<SpecDocument> {
  const extent = (axis: 'x' | 'y') => {
    const values = placed.map(({ at }) => at[axis])
    return { least: Math.min(...values), most: Math.max(...values) }
  }
  const [x, y] = [extent('x'), extent('y')]
  const axis = x.most - x.least >= y.most - y.least ? 'x' : 'y'
  const { least, most } = axis === 'x' ? x : y
  const inLine = placed.toSorted((one, other) => one.at[axis] - other.at[axis])
  const step = (most - least) / Math.max(1, inLine.length - 1)
  return putAt(document, inLine, (thing) => ({
    ...thing.at,
    [axis]: Math.round(least + inLine.indexOf(thing) * step),
  }))
}
