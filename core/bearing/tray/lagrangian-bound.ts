import type { AssignmentProblem, Option } from './assignment-problem.ts'

/** What a piece is priced at, by kind: from the tray, and from the tray or ordered, whichever is cheaper. */
export interface Prices {
  readonly inTray: readonly number[]
  readonly either: readonly number[]
  /** What one more ordered piece is priced at, beyond its cost, because no more than so many may be ordered. */
  readonly ordered: number
}

/**
 * Prices for pieces, whole and not below zero, high where many want what is scarce. With them on what is taken, the sum of
 * each place's cheapest option, less the price of all pieces there are, is never above the cost of any assignment that keeps
 * to the pieces (Lagrangian relaxation): the higher that sum, the sooner a search can stop. Found by subgradient steps
 * that shrink (Held, Wolfe, Crowder, Mathematical Programming 6, 1974).
 */
export function pricesOf(problem: AssignmentProblem, rounds: number): Prices {
  const { places, pieces, order } = problem
  const shrink = 0.001 ** (1 / rounds)
  let step = places.reduce((total, options) => total + spread(options) + order.cost, 0) / places.length
  let prices = withOrders(
    problem,
    pieces.map(() => 0),
    0,
  )
  let bestBound = { prices, bound: -Infinity }
  for (let round = 0; round < rounds; round++, step *= shrink) {
    const { bound, over, overOrdered } = relaxedAssignment(problem, prices)
    if (bound > bestBound.bound) bestBound = { prices, bound }
    const pull = Math.hypot(
      ...over.filter((each, kind) => each > 0 || prices.inTray[kind]! > 0),
      overOrdered > 0 || prices.ordered > 0 ? overOrdered : 0,
    )
    if (pull === 0) break
    const moved = (price: number, over: number) => Math.max(0, Math.round(price + (step * over) / pull))
    const inTray = prices.inTray.map((price, kind) => moved(price, over[kind]!))
    prices = withOrders(problem, inTray, Number.isFinite(order.most) ? moved(prices.ordered, overOrdered) : 0)
  }
  return bestBound.prices
}

function withOrders({ order }: AssignmentProblem, inTray: readonly number[], ordered: number): Prices {
  const either = inTray.map((price, kind) =>
    order.kinds[kind]! ? Math.min(price, ordered + order.cost) : price,
  )
  return { inTray, either, ordered }
}

function spread(options: readonly Option[]): number {
  const costs = options.map(({ cost }) => cost)
  return Math.max(...costs) - Math.min(...costs)
}

/** Every place takes its cheapest option: the bound that follows, and by how much that takes more than there is. */
function relaxedAssignment(
  { places, pieces, order }: AssignmentProblem,
  { inTray, either, ordered }: Prices,
) {
  const over = pieces.map((count) => -count)
  let overOrdered = -order.most
  let bound = priceOfAll(pieces, order.most, { inTray, either, ordered })
  for (const options of places) {
    let least = Infinity
    let takes: readonly number[] = []
    for (const option of options) {
      let cost = option.cost
      for (const kind of option.takes) cost += either[kind]!
      if (cost < least) {
        least = cost
        takes = option.takes
      }
    }
    bound += least
    for (const kind of takes) {
      if (inTray[kind]! <= either[kind]!) over[kind]! += 1
      else overOrdered += 1
    }
  }
  return { bound, over, overOrdered }
}

/** The price, below zero, of all that may be taken. */
function priceOfAll(pieces: readonly number[], mostOrdered: number, { inTray, ordered }: Prices): number {
  const orders = ordered === 0 ? 0 : ordered * mostOrdered
  return -pieces.reduce((total, count, kind) => total + count * inTray[kind]!, orders)
}
