import type { Procedure } from './fastening.ts'
import type { Pass } from './pass.ts'

/**
 * The fasteners of a pass in the order in which it goes through them; none for an action, nor for a pass over an order
 * that the procedure does not have.
 */
export function fastenersOf({ orders }: Procedure, pass: Pass): readonly string[] {
  if (pass.kind === 'action') return []
  const sequence = orders.find(({ id }) => id === pass.order)?.sequence ?? []
  if (pass.kind === 'loosen' && pass.reversed) return sequence.toReversed()
  const only = pass.kind === 'recheck' ? pass.only : undefined
  return only === undefined ? sequence : sequence.filter((id) => only.includes(id))
}
