import { fastenersOf, type EngineSpec, type Procedure } from '../../engine/index.ts'
import type { BetweenFaces, InParts } from '../../joint/index.ts'
import { done, type Outcome } from '../../problem/index.ts'
import { clampRunInParts, orderBy, placesOf, type ClampRun } from '../../tightening/index.ts'

/** Orders that a person need not tap: patterns of the trade, usual mistakes among them. */
export const triedPatterns = [
  'spiral',
  'centre-out',
  'crosswise',
  'row-by-row',
  'ends-first',
  'end-to-end',
  'reversed',
] as const
export type TriedPattern = (typeof triedPatterns)[number]

/** Procedures in which there is an order to try: with two fasteners at least. */
export function proceduresToTry(spec: EngineSpec): readonly Procedure[] {
  return spec.procedures.filter((procedure) => fastenersToTry(procedure).length > 1)
}

/** Every fastener that a procedure pulls, in the order in which it comes to it first. */
export function fastenersToTry(procedure: Procedure): readonly string[] {
  return [...new Set(procedure.passes.flatMap((pass) => fastenersOf(procedure, pass)))]
}

/**
 * The fasteners of a procedure in a pattern. `row-by-row`: along one row after another; `ends-first`: from both ends inwards;
 * `reversed`: the spec's own from its end.
 */
export function patternToTry(
  spec: EngineSpec,
  procedure: Procedure,
  pattern: TriedPattern,
): readonly string[] {
  const own = fastenersToTry(procedure)
  if (pattern === 'reversed') return own.toReversed()
  const places = placesOf(spec, own)
  if (pattern === 'row-by-row') return byRows(places)
  return pattern === 'ends-first' ? orderBy('centre-out', places).toReversed() : orderBy(pattern, places)
}

/** Rows are as far apart as this share of the face's width, or further. */
const betweenRows = 1 / 6

function byRows(places: ReturnType<typeof placesOf>): readonly string[] {
  const extent = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
  const [long, wide] = [extent(places.map(({ x }) => x)), extent(places.map(({ y }) => y))]
  const across = (place: (typeof places)[number]) => (long >= wide ? place.y : place.x)
  const along = (place: (typeof places)[number]) => (long >= wide ? place.x : place.y)
  const rows: (typeof places)[number][][] = []
  for (const place of places.toSorted((a, b) => across(b) - across(a))) {
    const row = rows.at(-1)
    const isSame = row !== undefined && across(row[0]!) - across(place) <= betweenRows * Math.min(long, wide)
    if (isSame) row.push(place)
    else rows.push([place])
  }
  return rows.flatMap((row) => row.toSorted((a, b) => along(a) - along(b)).map(({ id }) => id))
}

/** The procedure with all its passes gone through in an order; fasteners that are not in it come last, as the spec has them. */
export function inTriedOrder(procedure: Procedure, order: readonly string[]): Procedure {
  const orders = procedure.orders.map((each) => ({
    ...each,
    sequence: [
      ...order.filter((id) => each.sequence.includes(id)),
      ...each.sequence.filter((id) => !order.includes(id)),
    ],
  }))
  return { ...procedure, orders }
}

export interface WhatIf {
  readonly asGiven: ClampRun
  readonly tried: ClampRun
}

/** Runs a procedure through the model of its joint in the spec's order and in another one, a pull to each part. Refuses what `clampRun` refuses. */
export function* whatIf(
  spec: EngineSpec,
  procedure: Procedure,
  order: readonly string[],
  between: BetweenFaces,
): InParts<Outcome<WhatIf>> {
  const asGiven = yield* clampRunInParts(spec, procedure, between)
  if (!asGiven.ok) return asGiven
  const tried = yield* clampRunInParts(spec, inTriedOrder(procedure, order), between)
  return tried.ok ? done({ asGiven: asGiven.value, tried: tried.value }) : tried
}
