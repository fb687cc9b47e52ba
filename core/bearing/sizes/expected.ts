import type { Fit } from '../../engine/index.ts'
import { half, nanometres, type Length } from '../../quantity/index.ts'
import type { Range } from '../clearance.ts'

/** How far a size may stray from what the spec says and still be believed: wear, or the wrong part, but not the wrong unit. */
const shareOfDiameter = 0.03
const shareOfWall = 0.25

/**
 * Between which sizes a reading of a fit is believed: the spec's bands, undersizes included, and somewhat beyond. Null
 * where the spec has no bands for that part.
 */
export function expectedSize(fit: Fit, what: 'bore' | 'journal' | 'wall'): Range | null {
  const deepestUndersize = Math.max(0, ...fit.undersizes.map(({ undersize }) => undersize))
  switch (what) {
    case 'bore':
      return around(hull(fit.housing.marks.map(({ band }) => band)), 0, 0, shareOfDiameter)
    case 'journal':
      return around(hull(fit.journal.marks.map(({ band }) => band)), deepestUndersize, 0, shareOfDiameter)
    case 'wall':
      return around(
        hull([
          ...fit.grades.map(({ wall }) => wall),
          ...fit.undersizes.flatMap(({ walls = [] }) => walls.map(({ wall }) => wall)),
        ]),
        0,
        half(nanometres(deepestUndersize)),
        shareOfWall,
      )
    default:
      return what satisfies never
  }
}

/** From the lowest lower edge to the highest upper one of the bands that are given; null when none is. */
export function hull(bands: readonly (Fit['housing']['marks'][number]['band'] | undefined)[]): Range | null {
  const knownBands = bands.filter((each) => each !== undefined)
  if (knownBands.length === 0) return null
  return {
    least: nanometres(Math.min(...knownBands.map(({ over }) => over))),
    most: nanometres(Math.max(...knownBands.map(({ upTo }) => upTo))),
  }
}

function around(range: Range | null, less: number, more: number, share: number): Range | null {
  if (range === null) return null
  return { least: scaled(range.least - less, 1 - share), most: scaled(range.most + more, 1 + share) }
}

function scaled(size: number, factor: number): Length {
  return nanometres(Math.round(size * factor))
}
