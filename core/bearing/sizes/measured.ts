import { nanometres, type Length } from '../../quantity/index.ts'
import { atReference, type PartAtTemperature } from './thermal.ts'

/** Readings of one bore or journal: planes along the axis, in each the same directions across it. */
export type Grid = readonly (readonly Length[])[]

/** What the readings of one bore or journal come to, at 20 °C. */
export interface MeasuredSize {
  readonly least: Length
  readonly mean: Length
  readonly most: Length
  /** The greatest difference within one plane. */
  readonly outOfRound: Length
  /** The greatest difference between planes in one direction. */
  readonly taper: Length
  /** The same of planes that lie next to one another, next but one, and so on: one fewer than there are planes. */
  readonly taperByDistance: readonly Length[]
  readonly suspects: readonly Suspect[]
}

/** A reading that does not go with the others; counted from 0. It is pointed out, and counts until it is taken again. */
export interface Suspect {
  readonly plane: number
  readonly direction: number
  readonly size: Length
  /** The middle one of all readings of the part. */
  readonly middle: Length
}

/**
 * Brings every reading to 20 °C with the part's own expansion, then compares them. Throws a RangeError unless there is at
 * least one plane and every plane has the same number of directions, at least one.
 */
export function measure(grid: Grid, part: PartAtTemperature, gauge?: PartAtTemperature): MeasuredSize {
  const directions = grid[0]?.length ?? 0
  if (directions === 0 || grid.some((plane) => plane.length !== directions))
    throw new RangeError('every plane needs a reading in every direction')
  const planes = grid.map((plane) => plane.map((read) => atReference(read, part, gauge)))
  const all = planes.flat()
  const acrossPlanes = Array.from({ length: directions }, (_, direction) =>
    planes.flatMap((plane) => plane[direction] ?? []),
  )
  return {
    least: nanometres(Math.min(...all)),
    mean: nanometres(Math.round(all.reduce((total: number, each) => total + each, 0) / all.length)),
    most: nanometres(Math.max(...all)),
    outOfRound: greatestSpread(planes),
    taper: greatestSpread(acrossPlanes),
    taperByDistance: planes.slice(1).map((_, place) => greatestStep(planes, place + 1)),
    suspects: suspectsOf(planes),
  }
}

function greatestSpread(groups: readonly (readonly Length[])[]): Length {
  return nanometres(Math.max(...groups.map((group) => Math.max(...group) - Math.min(...group))))
}

/** The greatest difference, in one direction, between two planes of which one is so many places after the other. */
function greatestStep(planes: Grid, places: number): Length {
  const steps = planes
    .slice(places)
    .flatMap((plane, from) =>
      plane.map((size, direction) => Math.abs(size - (planes[from]?.[direction] ?? size))),
    )
  return nanometres(Math.max(...steps))
}

/** Readings in a workshop scatter by about 2 µm; where the others agree better than that, it is taken for their scatter. */
const leastScatter = 2_000

/**
 * The modified Z-score of Iglewicz and Hoaglin, 0.6745·|x − median| / MAD, points out what is above 3.5 (NIST/SEMATECH
 * e-Handbook of Statistical Methods, 1.3.5.17). Fewer than four readings cannot say which of them is wrong.
 */
function suspectsOf(planes: Grid): readonly Suspect[] {
  const all = planes.flat()
  if (all.length < 4) return []
  const middle = median(all)
  const scatter = Math.max(leastScatter, median(all.map((each) => Math.abs(each - middle))))
  return planes.flatMap((plane, at) =>
    plane.flatMap((size, direction) =>
      (0.6745 * Math.abs(size - middle)) / scatter > 3.5
        ? [{ plane: at, direction, size, middle: nanometres(Math.round(middle)) }]
        : [],
    ),
  )
}

function median(sizes: readonly number[]): number {
  const sorted = [...sizes].sort((a, b) => a - b)
  const above = sorted[Math.floor(sorted.length / 2)] ?? 0
  const below = sorted[Math.ceil(sorted.length / 2) - 1] ?? 0
  return (above + below) / 2
}
