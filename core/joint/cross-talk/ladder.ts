import { inMillimetres } from '../../quantity/index.ts'
import type { Saddle } from '../../engine/index.ts'
import { Perimeter, type Point } from '../../plane/index.ts'
import { meanOf, type FaceFastener } from './face-fasteners.ts'
import type { Flange, FlangeBolt } from './flange.ts'
import { Network } from './network.ts'
import { barSection, type Bar, type BetweenFaces } from './section.ts'

/** A wall across the case that carries a saddle, from the edge to the edge. */
interface Wall {
  readonly x: number
  readonly widthMm: number
  readonly boreMm: number
  /** Where it meets the edge, along the edge and across the case. */
  readonly ends: readonly [number, number]
  readonly from: number
  readonly upTo: number
}

/**
 * A rail along the edge of a face, with a wall at each saddle: a split case, a bedplate, or, without walls, a
 * cover or a sump.
 */
export function ladderFlange(
  outline: readonly Point[],
  saddles: readonly Saddle[],
  fasteners: readonly FaceFastener[],
  between: BetweenFaces,
): Flange {
  const edge = new Perimeter(outline)
  const walls = saddles.flatMap((saddle) => wallAt(edge, saddle) ?? [])
  const places = fasteners.map((fastener) => ({ fastener, ...placeOf(fastener, edge, walls) }))
  const network = new Network()

  const onRail = places.filter(({ wall }) => wall === null)
  network.lay({
    pointAt: (at) => edge.pointAt(at),
    stations: [...onRail.map(({ at }) => at), ...walls.flatMap(({ ends }) => ends)],
    closesAt: edge.length,
    section: barSection(railBar(onRail, fasteners), between),
    hasBed: () => true,
  })
  for (const wall of walls) {
    const here = places.filter((place) => place.wall === wall)
    const bore = wall.boreMm / 2
    const inside = (y: number) => y > wall.from && y < wall.upTo
    network.lay({
      pointAt: (y) => ({ x: wall.x, y }),
      stations: [wall.from, wall.upTo, ...here.map(({ at }) => at), ...[-bore, bore].filter(inside)],
      section: barSection(
        barOver(here.length > 0 ? here.map(({ fastener }) => fastener) : fasteners, wall.widthMm),
        between,
      ),
      hasBed: (y) => Math.abs(y) > bore,
    })
  }
  const bolts = places.map(({ fastener, wall, at }): FlangeBolt => ({
    id: fastener.id,
    node: network.nodeAt(wall === null ? edge.pointAt(at) : { x: wall.x, y: at }),
    stiffnessNPerMm: fastener.stiffnessNPerMm,
  }))
  const { nodes, beams } = network
  return {
    nodes,
    beams,
    bolts,
    assumptions: [...(walls.length > 0 ? (['walls'] as const) : []), 'rail', 'nearest-place'],
  }
}

function wallAt(edge: Perimeter, { at, width, diameter }: Saddle): Wall | null {
  const x = inMillimetres(at)
  const met = edge.across(x)
  if (met === null) return null
  return {
    x,
    widthMm: inMillimetres(width),
    boreMm: inMillimetres(diameter),
    ends: [met.low, met.high],
    from: edge.pointAt(met.low).y,
    upTo: edge.pointAt(met.high).y,
  }
}

/** Where a fastener pulls: in a wall (its y), or on the rail (how far along), whichever is nearer. */
interface Place {
  readonly wall: Wall | null
  readonly at: number
  readonly apartMm: number
}

function placeOf(fastener: Point, edge: Perimeter, walls: readonly Wall[]): Place {
  const onRail: Place = { wall: null, ...edge.nearestTo(fastener) }
  const inWalls = walls
    .filter(({ from, upTo }) => fastener.y > from && fastener.y < upTo)
    .map((wall): Place => ({ wall, at: fastener.y, apartMm: Math.abs(fastener.x - wall.x) }))
  return [onRail, ...inWalls].reduce((best, each) => (each.apartMm < best.apartMm ? each : best))
}

/**
 * A face of which no fastener is nearest to the edge has a rail as deep as its walls and as wide as a head.
 */
function railBar(
  onRail: readonly { readonly fastener: FaceFastener; readonly apartMm: number }[],
  all: readonly FaceFastener[],
): Bar {
  const own = onRail.length > 0 ? onRail.map(({ fastener }) => fastener) : all
  const inFromEdge = new Map(onRail.map(({ fastener, apartMm }) => [fastener, apartMm]))
  const width = meanOf(own, (each) => Math.max(2 * (inFromEdge.get(each) ?? 0), each.acrossFlatsMm))
  return barOver(own, width)
}

function barOver(fasteners: readonly FaceFastener[], widthMm: number): Bar {
  return {
    widthMm,
    depthMm: meanOf(fasteners, ({ gripMm }) => gripMm),
    modulusMpa: meanOf(fasteners, ({ modulusMpa }) => modulusMpa),
  }
}
