import type { Point } from '../../plane/index.ts'
import type { Disc } from '../labels/discs.ts'
import type { DrawingFacts, FastenerState } from '../facts.ts'

/** The fasteners of a face with what is known of them. */
interface Fasteners {
  readonly facts: DrawingFacts
  readonly discs: readonly Disc[]
}

/** The state in which a fastener is drawn, with the share of its passes that is done. */
export function stateOf(
  { facts }: Pick<Fasteners, 'facts'>,
  id: string,
): { state: FastenerState; share: number } {
  const { state = 'waiting', share = 0 } = facts.fasteners[id] ?? {}
  if (facts.actOn === `fastener/${id}`) return { state: 'flagged', share }
  // While somebody has to answer for a flag, nothing is next.
  if (facts.actOn !== null && (state === 'next' || state === 'after-next'))
    return { state: share > 0 ? 'partly-done' : 'waiting', share }
  return { state, share }
}

/** Those that keep their numbers for somebody who reads from afar: what is next, what comes after it, and its nearest neighbours. */
export function besideNext(drawing: Fasteners, count = 4): ReadonlySet<string> | null {
  const next = drawing.discs.find(
    ({ id }) => stateOf(drawing, id).state === 'next' || drawing.facts.actOn === `fastener/${id}`,
  )
  if (next === undefined) return null
  const distance = ({ x, y }: Point): number => Math.hypot(x - next.x, y - next.y)
  const nearestDiscs = drawing.discs
    .toSorted((one, other) => distance(one) - distance(other))
    .slice(0, count + 1)
  const after = drawing.discs.filter(({ id }) => stateOf(drawing, id).state === 'after-next')
  return new Set([...nearestDiscs, ...after].map(({ id }) => id))
}
