import { pricesOf } from './prices.ts'
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

/** How long the prices are sharpened before a search, and how many partial allotments it may look at. */
const searches = [
  { rounds: 0, looks: 100 },
  { rounds: 30, looks: 300 },
  { rounds: 400, looks: 20_000 },
  { rounds: 4000, looks: 300_000 },
] as const

/**
 * One way for every place so that no kind is taken more often than there are pieces of it, but for what may be ordered,
 * at the least sum of costs; null where that cannot be. `wants` are the allotting's own; a known
 * allotment is bettered or kept.
 *
 * `proved` is false where the last search was cut off: then a cheaper allotment may exist. That takes far more shells than
 * lie in one engine's tray.
 */
export function allot(
  allotting: Allotting,
  wants: Wants,
  known: Allotment | null = null,
): { readonly best: Allotment | null; readonly proved: boolean } {
  let best = known
  for (const { rounds, looks } of searches) {
    const found = search(allotting, wants, pricesOf(allotting, rounds), looks, best)
    best = found.best
    if (found.finished) return { best, proved: true }
  }
  return { best, proved: false }
}
