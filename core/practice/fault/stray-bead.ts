import type { Bead, EngineSpec, OilPassage } from '../../engine/index.ts'
import {
  distanceToSegment,
  gapToBox,
  insidePolygon,
  nearestOnSegment,
  sidesOf,
  type Point,
} from '../../plane/index.ts'
import { nanometres, type Length } from '../../quantity/index.ts'

/** A bead laid over an oil passage, with the path it would then have. */
export interface StrayBead {
  readonly bead: Bead
  readonly passage: OilPassage
  readonly path: Bead['path']
}

/** How far to either side of its kink the bead leaves its path, and how far a kink goes at most, in nm. */
const kinks = [12e6, 20e6, 30e6]
const farthestKink = 40e6
/** So many corners of a way round a passage can be left out. */
const mostCorners = 6

/** Each bead that can be laid over an oil passage of its face and meets nothing else. */
export function strayBeads(spec: EngineSpec): readonly StrayBead[] {
  return spec.beads.flatMap((bead) =>
    spec.case.oilPassages
      .filter(({ face }) => face === bead.face)
      .flatMap((passage): readonly StrayBead[] => {
        const path = [...shortcuts(bead), ...kinked(bead, passage)].find((each) =>
          meetsOnly(spec, { ...bead, path: each }, passage),
        )
        return path === undefined ? [] : [{ bead, passage, path }]
      }),
  )
}

const pointOf = ([x, y]: readonly [Length, Length]): Point => ({ x, y })

/** The bead laid straight on where its path goes round something: the fewest corners left out first. */
function shortcuts({ path }: Bead): readonly Bead['path'][] {
  return Array.from({ length: mostCorners }, (_, index) => index + 1).flatMap((count) =>
    Array.from({ length: Math.max(0, path.length - 1 - count) }, (_, from) => [
      ...path.slice(0, from + 1),
      ...path.slice(from + 1 + count),
    ]),
  )
}

/** The bead's path with a kink to the middle of the passage, from the side of it that is nearest first. */
function kinked(bead: Bead, passage: OilPassage): readonly Bead['path'][] {
  const middle = pointOf(passage.at)
  const sides = sidesOf(bead.path.map(pointOf), bead.closed).map((side, index) => ({ side, index }))
  const near = sides
    .filter(({ side }) => distanceToSegment(middle, ...side) <= farthestKink)
    .toSorted(
      (one, other) => distanceToSegment(middle, ...one.side) - distanceToSegment(middle, ...other.side),
    )
  return near.flatMap(({ side: [from, to], index }) => {
    const at = nearestOnSegment(middle, from, to)
    return kinks.map((kink): Bead['path'] => {
      const towards = (end: Point): readonly [Length, Length] => {
        const left = Math.hypot(end.x - at.x, end.y - at.y)
        const share = left === 0 ? 0 : Math.min(1, kink / left)
        const placed = (here: number, there: number) => nanometres(Math.round(here + (there - here) * share))
        return [placed(at.x, end.x), placed(at.y, end.y)]
      }
      const over: Bead['path'] = [towards(from), passage.at, towards(to)] as Bead['path']
      return [...bead.path.slice(0, index + 1), ...over, ...bead.path.slice(index + 1)]
    })
  })
}

/** Whether the bead's middle runs over this passage, and the bead meets no hole, other passage, zone to keep out of, or end of the face. */
function meetsOnly(spec: EngineSpec, bead: Bead, passage: OilPassage): boolean {
  const points = bead.path.map(pointOf)
  const sides = sidesOf(points, bead.closed)
  const boxOf = ({ at: [x, y], size: [width, height] }: Pick<OilPassage, 'at' | 'size'>) => ({
    ...{ left: x - width / 2, top: y - height / 2, width, height },
  })
  const gapTo = (zone: Pick<OilPassage, 'at' | 'size'>) =>
    Math.min(...sides.map(([from, to]) => gapToBox(boxOf(zone), from, to)))
  const isAt = (zone: Pick<OilPassage, 'at'>) =>
    Math.hypot(zone.at[0] - passage.at[0], zone.at[1] - passage.at[1]) < Math.max(...passage.size, bead.width)
  const others = [
    ...spec.case.oilPassages.filter((each) => each.face === bead.face && each !== passage),
    // The zone that the spec keeps clear for this passage is the same fault, not another one.
    ...bead.keepOut.filter((zone) => !isAt(zone)),
  ]
  const threads = new Map(spec.fastenerGroups.map(({ id, thread }) => [id, thread.diameter]))
  const holes = [
    ...spec.fasteners.map(({ face, at, group }) => ({
      face,
      at,
      diameter: threads.get(group) ?? nanometres(0),
    })),
    ...spec.case.dowels,
  ].filter(({ face }) => face === bead.face)
  const outline = spec.case.faces.find(({ id }) => id === bead.face)?.outline?.map(pointOf)
  return (
    gapTo(passage) === 0 &&
    others.every((zone) => gapTo(zone) >= bead.width / 2) &&
    holes.every(({ at, diameter }) =>
      sides.every((side) => distanceToSegment(pointOf(at), ...side) >= (diameter + bead.width) / 2),
    ) &&
    (outline === undefined || points.every((point) => insidePolygon(outline, point)))
  )
}
