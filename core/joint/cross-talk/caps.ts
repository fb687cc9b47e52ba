import type { Point } from '../../plane/index.ts'
import { meanOf, type FaceFastener } from './face-fasteners.ts'
import type { Flange, FlangeBolt } from './flange.ts'
import { Network } from './network.ts'
import { barSection, type BetweenFaces } from './section.ts'

/** A bearing with a cap of its own. Sizes in mm. */
export interface CappedBearing {
  readonly x: number
  readonly y: number
  readonly widthMm: number
  readonly boreMm: number
}

/**
 * A bar across each bearing, held by the fasteners nearest to it: main caps, rods. They do not touch each
 * other.
 */
export function cappedFlange(
  bearings: readonly CappedBearing[],
  fasteners: readonly FaceFastener[],
  between: BetweenFaces,
): Flange {
  const network = new Network()
  const bolts: FlangeBolt[] = []
  for (const bearing of bearings) {
    const own = fasteners.filter((fastener) => capOf(bearings, fastener) === bearing)
    if (own.length === 0) continue
    const beyond = Math.max(...own.map(({ acrossFlatsMm }) => acrossFlatsMm))
    const ys = own.map(({ y }) => y)
    const bore = [bearing.y - bearing.boreMm / 2, bearing.y + bearing.boreMm / 2] as const
    const ends = [Math.min(...ys, bore[0]) - beyond, Math.max(...ys, bore[1]) + beyond]
    network.lay({
      pointAt: (y) => ({ x: bearing.x, y }),
      stations: [...ends, ...bore, ...ys],
      section: barSection(
        {
          widthMm: bearing.widthMm,
          depthMm: meanOf(own, ({ gripMm }) => gripMm),
          modulusMpa: meanOf(own, ({ modulusMpa }) => modulusMpa),
        },
        between,
      ),
      hasBed: (y) => y < bore[0] || y > bore[1],
    })
    for (const { id, y, stiffnessNPerMm } of own)
      bolts.push({ id, node: network.nodeAt({ x: bearing.x, y }), stiffnessNPerMm })
  }
  const { nodes, beams } = network
  return { nodes, beams, bolts, assumptions: ['caps'] }
}

/** The cap that a fastener holds: the nearest; undefined among none. */
export function capOf(bearings: readonly CappedBearing[], { x, y }: Point): CappedBearing | undefined {
  const apart = (bearing: CappedBearing) => Math.hypot(bearing.x - x, bearing.y - y)
  return bearings.toSorted((a, b) => apart(a) - apart(b))[0]
}
