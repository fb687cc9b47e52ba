import { pricesOf } from './lagrangian-bound.ts'
import { search, type Wants } from './search.ts'

/** One way of filling a place: what it costs, whole, and the kinds it takes a piece of; a kind may come twice. */
export interface Way {
  readonly cost: number
  readonly takes: readonly number[]
}

/** What is to be allotted: the ways of every place, one at least, the pieces there are of each kind, and what may be ordered. */
export interface Allotting {
  readonly places: readonly (readonly Way[])[]
  readonly pieces: readonly number[]
  readonly order: {
    /** By kind: whether a piece beyond those there are can be ordered. */
    readonly kinds: readonly boolean[]
    /** What ordering a piece costs, and how many may be ordered; `Infinity` for any number. */
    readonly cost: number
    readonly most: number
  }
  /** Every cost is a multiple of it. */
  readonly grain: number
}

export interface Allotment {
  /** For every place the index of its way. */
  readonly ways: readonly number[]
  readonly cost: number
}

/** How many rounds the prices are sharpened before a search, and how many ways it may then weigh. */
const searches = [
  { rounds: 0, weighings: 2_000 },
  { rounds: 30, weighings: 6_000 },
  { rounds: 400, weighings: 200_000 },
  { rounds: 4000, weighings: 2_000_000 },
] as const

/** Each round weighs every way once: of very many ways, so many in all. Together with the searches it bounds the wait. */
const mostInRounds = 10_000_000

/**
 * One way for every place so that no kind is taken more often than there are pieces of it, but for what may be ordered,
 * at the least sum of costs; null where that cannot be. `wants` are the allotting's own; a known
 * allotment is bettered or kept.
 *
 * `proved` is false where the last search was cut off: then a cheaper allotment may exist. That takes some forty shells
 * measured one by one; what is weighed, and so the wait, is bounded whatever lies in the tray.
 */
export function allot(
  allotting: Allotting,
  wants: Wants,
  known: Allotment | null = null,
): { readonly best: Allotment | null; readonly proved: boolean } {
  const ways = allotting.places.reduce((total, each) => total + each.length, 0)
  const mostRounds = Math.ceil(mostInRounds / ways)
  let best = known
  for (const { rounds, weighings } of searches) {
    // A search that cannot weigh every way once finds nothing.
    if (weighings < ways && rounds < searches.at(-1)!.rounds) continue
    const prices = pricesOf(allotting, Math.min(rounds, mostRounds))
    const found = search(allotting, wants, prices, weighings, best)
    best = found.best
    if (found.finished) return { best, proved: true }
  }
  return { best, proved: false }
}
