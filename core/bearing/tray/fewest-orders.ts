import { allot, type Allotment, type Way } from './assign.ts'
import { wantsOf } from './search.ts'

/**
 * The allotment with the fewest ordered pieces and, with no more than those, the least sum of costs. `orderable` says of
 * each kind whether pieces beyond those there are can be ordered. Null where some place can be filled by neither.
 */
export function fewestOrdersThenNearest(
  places: readonly (readonly Way[])[],
  pieces: readonly number[],
  orderable: readonly boolean[],
): { readonly best: Allotment | null; readonly proved: boolean } {
  // Prices are whole numbers, so an order costs enough of them for its price to be a fine one.
  const costOfOrder = 1000
  const wants = wantsOf({ places, pieces })
  const fewest = allot(
    {
      places: places.map((ways) => ways.map(({ takes }) => ({ cost: 0, takes }))),
      pieces,
      order: { kinds: orderable, cost: costOfOrder, most: Infinity },
      grain: costOfOrder,
    },
    wants,
  )
  if (fewest.best === null) return fewest
  const { ways } = fewest.best
  const cost = ways.reduce((total, way, place) => total + places[place]![way]!.cost, 0)
  const order = { kinds: orderable, cost: 0, most: fewest.best.cost / costOfOrder }
  const nearest = allot({ places, pieces, order, grain: 1 }, wants, { ways, cost })
  return { best: nearest.best, proved: fewest.proved && nearest.proved }
}
