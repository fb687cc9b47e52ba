import { assign } from './assign.ts'
import type { Assignment, Option } from './assignment-problem.ts'
import { wantsOf } from './search.ts'

/**
 * The assignment with the fewest ordered pieces and, with no more than those, the least sum of costs. `orderable` says of
 * each kind whether pieces beyond those there are can be ordered. Null where some place can be filled by neither.
 */
export function fewestOrdersThenNearest(
  places: readonly (readonly Option[])[],
  pieces: readonly number[],
  orderable: readonly boolean[],
): { readonly best: Assignment | null; readonly proved: boolean } {
  // Prices are whole numbers, so an order costs enough of them for its price to be a fine one.
  const costOfOrder = 1000
  const wants = wantsOf({ places, pieces })
  const fewest = assign(
    {
      places: places.map((options) => options.map(({ takes }) => ({ cost: 0, takes }))),
      pieces,
      order: { kinds: orderable, cost: costOfOrder, most: Infinity },
      grain: costOfOrder,
    },
    wants,
  )
  if (fewest.best === null) return fewest
  const { options } = fewest.best
  const cost = options.reduce((total, option, place) => total + places[place]![option]!.cost, 0)
  const order = { kinds: orderable, cost: 0, most: fewest.best.cost / costOfOrder }
  const nearestAssignment = assign({ places, pieces, order, grain: 1 }, wants, { options, cost })
  return { best: nearestAssignment.best, proved: fewest.proved && nearestAssignment.proved }
}
