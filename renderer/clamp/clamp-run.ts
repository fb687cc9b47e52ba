import { clampMap, flangeOf } from '../../core/joint/index.ts'
import type { Between, ClampMap, Flange } from '../../core/joint/index.ts'
import { faceOutline } from '../../core/layout/index.ts'
import { done } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { EngineSpec, Procedure } from '../../core/engine/index.ts'
import { orderBy, placesOf, pullsOf } from '../../core/tightening/index.ts'

/** In which order a procedure is run through the model: the spec's, a person's own, the spec's from its end, a pattern. */
export const mappedOrders = [
  'spec',
  'own',
  'reversed',
  'centre-out',
  'spiral',
  'crosswise',
  'end-to-end',
] as const
export type MappedOrder = (typeof mappedOrders)[number]

export interface ClampRun {
  readonly flange: Flange
  readonly map: ClampMap
}

/** A procedure run through the model of its joint face, pull by pull. */
export function clampRun(spec: EngineSpec, procedure: Procedure, between: Between): Outcome<ClampRun> {
  const flange = flangeOf(spec, procedure.face, faceOutline(spec, procedure.face), between)
  if (!flange.ok) return flange
  const pulls = pullsOf(spec, procedure)
  if (!pulls.ok) return pulls
  return done({ flange: flange.value, map: clampMap(flange.value, pulls.value) })
}

/** A procedure in another order; `own` is the same one in a person's own, null where there is none. */
export function inOrder(
  spec: EngineSpec,
  procedure: Procedure,
  own: Procedure | null,
  order: MappedOrder,
): Procedure {
  if (order === 'spec') return procedure
  if (order === 'own') return own ?? procedure
  const orders = procedure.orders.map((each) => {
    const places = placesOf(spec, each.sequence)
    return {
      ...each,
      sequence: order === 'reversed' ? each.sequence.toReversed() : [...orderBy(order, places)],
    }
  })
  return { ...procedure, orders }
}
