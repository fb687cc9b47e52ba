import { clampMap, flangeOf } from '../../core/joint/index.ts'
import type { Between, ClampMap, Flange } from '../../core/joint/index.ts'
import { faceOutline } from '../../core/layout/index.ts'
import { done } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import { inMillimetres } from '../../core/quantity/index.ts'
import type { EngineSpec, Procedure } from '../../core/spec/index.ts'
import { orderBy, pullsOf } from '../../core/tightening/index.ts'
import type { PatternName } from '../../core/tightening/index.ts'

/** In which order a procedure is run through the model: the spec's own, the same from its end, or a pattern. */
export type MappedOrder = 'spec' | 'reversed' | PatternName

export const orderNames: { readonly [Each in MappedOrder]: string } = {
  spec: 'as the spec has it',
  reversed: 'from its end',
  'centre-out': 'centre out',
  spiral: 'spiral',
  crosswise: 'crosswise',
  'end-to-end': 'end to end',
}

export interface MappedRun {
  readonly flange: Flange
  readonly map: ClampMap
}

/** A procedure run through the model of its joint face, pull by pull. */
export function mappedRun(
  spec: EngineSpec,
  procedure: Procedure,
  order: MappedOrder,
  between: Between,
): Outcome<MappedRun> {
  const flange = flangeOf(spec, procedure.face, faceOutline(spec, procedure.face), between)
  if (!flange.ok) return flange
  const pulls = pullsOf(spec, reordered(spec, procedure, order))
  if (!pulls.ok) return pulls
  return done({ flange: flange.value, map: clampMap(flange.value, pulls.value) })
}

function reordered(spec: EngineSpec, procedure: Procedure, order: MappedOrder): Procedure {
  if (order === 'spec') return procedure
  const places = new Map(
    spec.fasteners.map(({ id, at: [x, y] }) => [id, { id, x: inMillimetres(x), y: inMillimetres(y) }]),
  )
  const orders = procedure.orders.map((each) => ({
    ...each,
    sequence:
      order === 'reversed'
        ? each.sequence.toReversed()
        : [
            ...orderBy(
              order,
              each.sequence.map((id) => places.get(id)!),
            ),
          ],
  }))
  return { ...procedure, orders }
}
