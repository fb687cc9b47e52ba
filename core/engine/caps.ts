import type { EngineCase } from './case.ts'

/** A cap with the fasteners that hold it, in the order in which the procedure first comes to them. */
export interface Cap {
  /** Of the bearing: saddle, rod or balance bearing. */
  readonly id: string
  readonly fasteners: readonly string[]
}

interface Engine {
  readonly case: EngineCase
  readonly fasteners: readonly { readonly id: string; readonly at: readonly [number, number] }[]
}

interface OverCaps {
  readonly face: string
  readonly orders: readonly { readonly sequence: readonly string[] }[]
}

/**
 * The bearings on a face that have caps that do not touch each other, as rods have and the carriers in a tunnel case; none where
 * the face is one joint.
 */
export function cappedBearings({ case: engine }: Pick<Engine, 'case'>, face: string) {
  const { family, saddles, rods, balanceBearings } = engine
  const shows = engine.faces.find(({ id }) => id === face)?.shows ?? 'flange'
  return {
    saddles: family === 'caps' || family === 'tunnel' ? saddles : [],
    rods,
    balance: balanceBearings,
    flange: [],
  }[shows]
}

/**
 * The caps that a procedure closes, in the order in which it first comes to each: a fastener holds the cap that is nearest to it.
 * None where its face has no caps.
 */
export function capsOf(engine: Engine, { face, orders }: OverCaps): readonly Cap[] {
  const bearings = cappedBearings(engine, face)
  const caps = new Map<string, string[]>()
  for (const id of new Set(orders.flatMap(({ sequence }) => sequence))) {
    const at = engine.fasteners.find((each) => each.id === id)?.at
    const cap = at && nearestSaddle(bearings, at)
    if (cap !== undefined) caps.set(cap, [...(caps.get(cap) ?? []), id])
  }
  return [...caps].map(([id, fasteners]) => ({ id, fasteners }))
}

function nearestSaddle(
  bearings: ReturnType<typeof cappedBearings>,
  [x, y]: readonly [number, number],
): string | undefined {
  const apart = (bearing: (typeof bearings)[number]) =>
    Math.hypot(bearing.at - x, ('across' in bearing ? bearing.across : 0) - y)
  return bearings.toSorted((a, b) => apart(a) - apart(b))[0]?.id
}
