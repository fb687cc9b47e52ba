import { capsOf, fastenersOf, type EngineSpec, type Procedure } from '../../engine/index.ts'
import {
  atOnce,
  clampMapInParts,
  flangeOf,
  type BetweenFaces,
  type ClampMap,
  type ClampState,
  type Flange,
  type InParts,
} from '../../joint/index.ts'
import { faceOutline } from '../../layout/index.ts'
import { done, type Outcome } from '../../problem/index.ts'
import { pullsOf } from './flange-pulls.ts'
import { placesOf } from '../order/order-remarks.ts'
import { orderBy } from '../order/pattern.ts'

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

/** A procedure that was run through the model of its joint face, pull by pull. */
export interface ClampRun {
  readonly flange: Flange
  readonly map: ClampMap
  /** In the order in which they are made: which bolt, in which pass of the procedure. */
  readonly pulls: readonly { readonly pass: number; readonly bolt: string }[]
  /** The procedure's own fasteners on this face; whatever else is there only holds still. */
  readonly own: ReadonlySet<string>
}

/** Refuses what `flangeOf` and `pullsOf` refuse. */
export function clampRun(spec: EngineSpec, procedure: Procedure, between: BetweenFaces): Outcome<ClampRun> {
  return atOnce(clampRunInParts(spec, procedure, between))
}

/** The same, one pull to each part. */
export function* clampRunInParts(
  spec: EngineSpec,
  procedure: Procedure,
  between: BetweenFaces,
): InParts<Outcome<ClampRun>> {
  const flange = flangeOf(spec, procedure.face, faceOutline(spec, procedure.face), between)
  if (!flange.ok) return flange
  const pulls = pullsOf(spec, procedure)
  if (!pulls.ok) return pulls
  const map = yield* clampMapInParts(flange.value, pulls.value)
  return done({
    flange: flange.value,
    // Cap by cap, no pass ends before the last cap: there is nothing to compare two orders by until then.
    map: procedure.caps === undefined ? map : { ...map, afterPasses: map.afterPasses.slice(-1) },
    pulls: pulls.value,
    own: new Set(procedure.passes.flatMap((pass) => fastenersOf(procedure, pass))),
  })
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
  const caps = procedure.caps && { caps: capsOf(spec, { ...procedure, orders }) }
  return { ...procedure, orders, ...caps }
}

/** How a flange lies after so many pulls; 0 is before the first, and past the last it lies as after that. */
export function clampAfter({ map }: ClampRun, count: number): ClampState {
  return map.afterPulls[Math.min(count, map.afterPulls.length) - 1] ?? map.atRest
}

/**
 * What each of the procedure's fasteners holds after so many pulls, by its id, in N. One that was not pulled yet is not in
 * it: what is calculated for it is that it touches.
 */
export function loadsAfter(run: ClampRun, count: number): ReadonlyMap<string, number> {
  const pulled = new Set(run.pulls.slice(0, count).map(({ bolt }) => bolt))
  const { loads } = clampAfter(run, count)
  return new Map(
    run.flange.bolts.flatMap(({ id }, place) =>
      pulled.has(id) && run.own.has(id) ? [[id, Number(loads[place])] as const] : [],
    ),
  )
}

/** Where two orders of one procedure leave a fastener with the most different loads, in N. */
export interface ClampDifference {
  readonly pass: number
  /** So many pulls are made at the end of that pass. */
  readonly pulls: number
  readonly bolt: string
  readonly first: number
  readonly second: number
}

/**
 * The greatest difference after each pass, in the order of the passes. Passes are compared at their ends: in the middle of one
 * two orders have pulled different bolts, which says nothing of either.
 */
export function passDifferences(first: ClampRun, second: ClampRun): readonly ClampDifference[] {
  return first.map.afterPasses.flatMap(({ pass }) => {
    const pulls = first.pulls.findLastIndex((pull) => pull.pass === pass) + 1
    const [one, other] = [loadsAfter(first, pulls), loadsAfter(second, pulls)]
    let most: ClampDifference | null = null
    for (const [bolt, load] of one) {
      const found = { pass, pulls, bolt, first: load, second: other.get(bolt) ?? 0 }
      if (most === null || Math.abs(found.second - found.first) > Math.abs(most.second - most.first))
        most = found
    }
    return most === null ? [] : [most]
  })
}

/** The pass after which two orders differ most; null where none of them pulls anything. The first of several alike. */
export function greatestDifference(first: ClampRun, second: ClampRun): ClampDifference | null {
  return passDifferences(first, second).reduce<ClampDifference | null>(
    (most, each) =>
      most === null || Math.abs(each.second - each.first) > Math.abs(most.second - most.first) ? each : most,
    null,
  )
}
