import type { Assignment, AssignmentProblem, Option } from './assignment-problem.ts'
import type { Prices } from './lagrangian-bound.ts'

/** What the places from each one on can take at most, by kind, and which kinds they could run short of. */
export interface Demand {
  readonly most: readonly (readonly number[])[]
  readonly scarce: readonly (readonly number[])[]
}

export function wantsOf({ places, pieces }: Pick<AssignmentProblem, 'places' | 'pieces'>): Demand {
  const none = pieces.map(() => 0)
  const most = fromTheEnd(places, none, (later, options) => {
    const mostUsed = mostTaken(options, pieces.length)
    return later.map((count, kind) => count + mostUsed[kind]!)
  })
  const scarce = most.map((row) =>
    row.flatMap((count, kind) => (count > 0 && most[0]![kind]! > pieces[kind]! ? [kind] : [])),
  )
  return { most, scarce }
}

/** So many options of one place are followed at most, the cheapest at the given prices: more than one engine's tray gives. */
const mostOptions = 1000

/**
 * Branch and bound: place after place, most promising option first. What is still to come costs at least each later place's
 * cheapest option at the given prices, less the price of what they could still take; of two beginnings that leave the same
 * pieces, only the cheaper is followed. Weighs about `weighings` options and no more; `finished` says that these were all that
 * mattered, so that `best`, which is never worse than `known`, is the best there is.
 */
export function search(
  { places, pieces, order, grain }: AssignmentProblem,
  wants: Demand,
  prices: Prices,
  weighings: number,
  known: Assignment | null,
): { readonly best: Assignment | null; readonly finished: boolean } {
  const priced = places.map((options) =>
    options
      .map(({ cost, takes }, index) => {
        let price = cost
        for (const kind of takes) price += prices.either[kind]!
        return { cost, takes, index, price }
      })
      .sort((a, b) => a.price - b.price),
  )
  const cheapest = priced.map((options) => options[0]?.price ?? Infinity)
  const toCome = fromTheEnd(cheapest, 0, (later, price) => later + price)
  const pricedKinds = prices.inTray.flatMap((price, kind) => (price > 0 ? [kind] : []))
  const left = [...pieces]
  const chosen: number[] = []
  const reached = places.map(() => new Map<string, number>())
  let bestAssignment = known
  let weighingsLeft = weighings
  let cutOff = false

  function visit(place: number, cost: number, ordered: number, bound: number): void {
    if (place === places.length) {
      if (bestAssignment === null || cost < bestAssignment.cost)
        bestAssignment = { options: chosen.slice(), cost }
      return
    }
    if (weighingsLeft <= 0) {
      cutOff = true
      return
    }
    // To remember a beginning costs about as much as to weigh as many options as it is remembered by.
    weighingsLeft -= wants.scarce[place]!.length
    const key = keyOfLeft(place, ordered)
    if ((reached[place]!.get(key) ?? Infinity) <= cost) return
    reached[place]!.set(key, cost)
    const onward = []
    const unsold = worthOfLeft(place + 1)
    for (const option of priced[place]!) {
      if (cannotWin(bound + option.price - cheapest[place]!)) break
      if (onward.length === mostOptions) {
        cutOff = true
        break
      }
      weighingsLeft -= 1
      const sold = worthOf(option.takes, place + 1)
      const orders = ordered + take(option.takes)
      if (Number.isFinite(orders) && orders <= order.most) {
        const spent = cost + option.cost + (orders - ordered) * order.cost
        const bound = boundAt(place + 1, spent, orders, unsold - sold)
        if (!cannotWin(bound)) onward.push({ option, spent, orders, bound })
      }
      putBack(option.takes)
    }
    onward.sort((a, b) => a.bound - b.bound)
    for (const { option, spent, orders, bound } of onward) {
      if (cannotWin(bound)) break
      take(option.takes)
      chosen[place] = option.index
      visit(place + 1, spent, orders, bound)
      putBack(option.takes)
    }
  }

  function cannotWin(bound: number): boolean {
    return bestAssignment !== null && bound > bestAssignment.cost - grain
  }

  /** Says how many of the pieces must be ordered; `Infinity` where one cannot be. */
  function take(kinds: readonly number[]): number {
    let short = 0
    for (const kind of kinds) if ((left[kind]! -= 1) < 0) short += order.kinds[kind]! ? 1 : Infinity
    return short
  }

  function putBack(kinds: readonly number[]): void {
    for (const kind of kinds) left[kind]! += 1
  }

  /** What is to come costs this at least; `worth` is that of the pieces left. */
  function boundAt(place: number, cost: number, ordered: number, worth: number): number {
    const ordersLeft = prices.ordered > 0 ? prices.ordered * (order.most - ordered) : 0
    return cost + toCome[place]! - ordersLeft - worth
  }

  /** The price of all pieces left that the places from this one on could take. */
  function worthOfLeft(place: number): number {
    const mostOfKinds = wants.most[place]!
    let worth = 0
    for (const kind of pricedKinds)
      worth += prices.inTray[kind]! * Math.max(0, Math.min(left[kind]!, mostOfKinds[kind]!))
    return worth
  }

  /** What that loses by these pieces: a kind that is left in plenty loses nothing. */
  function worthOf(kinds: readonly number[], place: number): number {
    const mostOfKinds = wants.most[place]!
    let worth = 0
    for (const kind of kinds) {
      if (left[kind]! > 0 && left[kind]! <= mostOfKinds[kind]!) worth += prices.inTray[kind]!
      left[kind]! -= 1
    }
    for (const kind of kinds) left[kind]! += 1
    return worth
  }

  /** What the places to come find: of each scarce kind as many as they could want, and orders where these are counted. */
  function keyOfLeft(place: number, ordered: number): string {
    let key = Number.isFinite(order.most) ? String.fromCharCode(ordered) : ''
    const mostOfKinds = wants.most[place]!
    for (const kind of wants.scarce[place]!)
      key += String.fromCharCode(Math.max(0, Math.min(left[kind]!, mostOfKinds[kind]!)))
    return key
  }

  const boundOfAll = boundAt(0, 0, 0, worthOfLeft(0))
  visit(0, 0, 0, boundOfAll)
  return { best: bestAssignment, finished: !cutOff || cannotWin(boundOfAll) }
}

/** By kind, the most that any one option takes. */
function mostTaken(options: readonly Option[], kinds: number): readonly number[] {
  const mostOfKinds = new Array<number>(kinds).fill(0)
  for (const { takes } of options)
    for (const kind of takes) {
      const count = takes.filter((each) => each === kind).length
      if (count > mostOfKinds[kind]!) mostOfKinds[kind] = count
    }
  return mostOfKinds
}

/** The running value before every item, gathered from the last item backwards; the last entry is `end`. */
function fromTheEnd<Item, Value>(
  items: readonly Item[],
  end: Value,
  step: (later: Value, item: Item) => Value,
): readonly Value[] {
  const values = [end]
  for (const item of items.toReversed()) values.push(step(values.at(-1)!, item))
  return values.reverse()
}
