import { freedoms } from './beam.ts'
import { lineOf, type Flange } from './flange.ts'

/**
 * A spring at a node that acts one way only: it gives `stiffness` (N/mm) for each mm by which it is squeezed,
 * and nothing while it is not. What squeezes it are the node's freedoms times `squeeze`, counted from
 * `start`.
 */
export interface OneWayContact {
  readonly node: number
  readonly stiffness: number
  readonly squeeze: readonly [number, number, number]
  /** In mm; −∞ for a spring that is taken out. */
  readonly start: number
}

/**
 * The bed as pads that only push: at either end of each beam half of the bed under it, as two pads across the
 * beam, so far out (width/√12) that they resist rolling over as an even bed does. Pads on one spot are one.
 */
export function padsOf(flange: Flange): readonly OneWayContact[] {
  const pads = new Map<string, OneWayContact>()
  for (const beam of flange.beams) {
    if (beam.bedMpa === 0) continue
    const { lengthMm, cos, sin } = lineOf(flange, beam)
    for (const node of [beam.from, beam.to])
      for (const side of [-1, 1]) {
        const out = (side * beam.widthMm) / Math.sqrt(12)
        const squeeze = [1, -sin * out, cos * out] as const
        const spot = `${node}/${squeeze[1].toFixed(9)}/${squeeze[2].toFixed(9)}`
        const stiffness = (pads.get(spot)?.stiffness ?? 0) + (beam.bedMpa * lengthMm) / 4
        pads.set(spot, { node, stiffness, squeeze, start: 0 })
      }
  }
  return [...pads.values()]
}

/**
 * The bolts as springs that only pull, all taken out: a node that goes down slackens them, a nut that comes
 * down is their start.
 */
export function pullersOf(flange: Flange): readonly OneWayContact[] {
  return flange.bolts.map(({ node, stiffnessNPerMm }) => ({
    node,
    stiffness: stiffnessNPerMm,
    squeeze: [-1, 0, 0],
    start: -Infinity,
  }))
}

/** By how many mm a spring is squeezed, below 0 when it does not touch. */
export function squeezed(spring: OneWayContact, deflections: Float64Array): number {
  return spring.start + along(spring, deflections)
}

/** How much more a step in the deflections squeezes a spring. */
export function along({ node, squeeze }: OneWayContact, step: Float64Array): number {
  const at = node * freedoms
  return squeeze[0] * step[at]! + squeeze[1] * step[at + 1]! + squeeze[2] * step[at + 2]!
}

/** Adds a force along a spring to the forces on all nodes. */
export function push({ node, squeeze }: OneWayContact, force: number, forces: Float64Array): void {
  const at = node * freedoms
  forces[at]! += squeeze[0] * force
  forces[at + 1]! += squeeze[1] * force
  forces[at + 2]! += squeeze[2] * force
}
