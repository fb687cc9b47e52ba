import { boxBetween } from '../../plane/index.ts'
import type { DrawingFacts } from '../facts.ts'
import type { BearingPlace } from '../case/on-face.ts'
import type { Box } from '../scene/scene.ts'
import { leastCapital } from '../sizes.ts'
import { textWidth } from '../labels/text-width.ts'
import type { Projection } from '../view.ts'

/** Of a half's box, what its letter and the tick after it may take: the pattern stays in sight round them. */
export const letterShare = { along: 0.72, across: 0.45 } as const
/** Capitals of a letter, in px, where the bearing is not smaller on the sheet than its symbol. */
const letterCapital = 11
/** How much of the way to its neighbour a bearing's symbol takes at the most. */
const mostOfPitch = 0.94

/** The longest letter of the grades on a face, with the tick of a fitted shell, in capitals. */
function letterWidth({ bearings }: DrawingFacts): number {
  const grades = Object.values(bearings).flatMap(({ upper, lower }) => [
    upper?.grade ?? '',
    lower?.grade ?? '',
  ])
  return Math.max(...['M', ...grades].map((grade) => textWidth(grade, 1, 'bold'))) + 1
}

/**
 * How wide the symbol of a bearing is, in mm: as the bearing itself, or as wide as its letter asks for where its neighbours
 * let it. `ends` are those of the case along the engine, in mm.
 */
export function symbolWidth(
  bearing: BearingPlace,
  all: readonly BearingPlace[],
  facts: DrawingFacts,
  px: number,
  ends: { readonly from: number; readonly to: number },
): number {
  const { x, y, id, width } = bearing
  const pitch = all
    .filter((other) => other.id !== id && other.y === y)
    .reduce((least, other) => Math.min(least, Math.abs(other.x - x)), Infinity)
  const lengthOfLetters = (letterWidth(facts) * letterCapital * px) / letterShare.along
  // Nor does it reach beyond the end of the case.
  const inside = 2 * Math.min(x - ends.from, ends.to - x)
  return Math.max(width, Math.min(lengthOfLetters, pitch * mostOfPitch, inside))
}

/** How far each half reaches for a letter as large as is asked for, where there is room. */
export function wantedReach(px: number): number {
  return (letterCapital / letterShare.across + 2) * px
}

/** How far each half must reach across to hold a letter that can still be read, with its pattern in sight round it. */
export function leastReach(px: number): number {
  return (leastCapital / letterShare.across + 2) * px
}

/** The least room each bearing takes on the sheet, whatever stands beside it. */
export function minimalBoxes(
  bearings: readonly BearingPlace[],
  place: Projection,
  stretch: number,
  px: number,
): readonly Box[] {
  return bearings.map(({ x, y, width }) => {
    const reach = leastReach(px) / stretch
    return boxBetween(place(x - width / 2, y - reach), place(x + width / 2, y + reach))
  })
}
