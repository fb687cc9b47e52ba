import type { EngineSpec, Procedure } from '../../engine/index.ts'
import type { InParts } from '../../joint/index.ts'
import {
  clampRunInParts,
  passDifferences,
  type ClampDifference,
  type ClampRun,
} from '../../tightening/index.ts'
import type { Outcome } from '../../problem/index.ts'
import { done } from '../../problem/index.ts'
import type { OrderDrill } from './order-drill.ts'

/** What the joint would be like at the end of the pass, as the order has it and with one fastener before its turn. */
export interface OrderConsequence {
  readonly face: string
  readonly right: ClampRun
  readonly wrong: ClampRun
  /** The fastener whose load differs most, `first` as the order has it, `second` with the mistake. In N. */
  readonly most: ClampDifference
}

/**
 * With a gasket between the faces, where bolts take more load from each other and the lesson is plain to see. Runs the
 * procedure up to the end of the drill's pass through the model of its joint face twice. Null where the pass moves no load that
 * the model knows, or would be gone through backwards. Of a large engine it takes a second: one pull to each part. Refuses
 * what `clampRun` refuses.
 */
export function* orderConsequence(
  spec: EngineSpec,
  { procedure, pass }: OrderDrill,
  wanted: string,
  tapped: string,
): InParts<Outcome<OrderConsequence | null>> {
  const upTo = { ...procedure, passes: procedure.passes.slice(0, pass + 1) }
  const mistaken = withBefore(upTo, pass, wanted, tapped)
  if (mistaken === null) return done(null)
  const right = yield* clampRunInParts(spec, upTo, 'gasket')
  if (!right.ok) return right
  const wrong = yield* clampRunInParts(spec, mistaken, 'gasket')
  if (!wrong.ok) return wrong
  const largestDifference = passDifferences(right.value, wrong.value).find(
    (difference) => difference.pass === pass,
  )
  return done(
    largestDifference === undefined
      ? null
      : { face: procedure.face, right: right.value, wrong: wrong.value, most: largestDifference },
  )
}

/** The procedure with `tapped` before `wanted` in one pass, and all other passes as they are. */
function withBefore(procedure: Procedure, index: number, wanted: string, tapped: string): Procedure | null {
  const pass = procedure.passes[index]
  if (pass === undefined || pass.kind === 'action' || pass.kind === 'loosen') return null
  const sequence = procedure.orders.find(({ id }) => id === pass.order)?.sequence ?? []
  if (!sequence.includes(tapped) || !sequence.includes(wanted)) return null
  const others = sequence.filter((id) => id !== tapped)
  const at = others.indexOf(wanted)
  // No order of the spec has this id: ids have no blank.
  const id = `${pass.order} mistaken`
  const mistaken = { id, sequence: [...others.slice(0, at), tapped, ...others.slice(at)] }
  return {
    ...procedure,
    orders: [...procedure.orders, mistaken],
    passes: procedure.passes.map((each, place) => (place === index ? { ...pass, order: id } : each)),
  }
}
