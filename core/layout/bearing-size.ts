import { boxBetween } from './box.ts'
import type { BearingPlace, OnFace } from './on-face.ts'
import type { Box } from './scene.ts'
import type { Sizes } from './sizes.ts'
import type { Projection } from './view.ts'

/** The capitals of the grade's letter: as large as the saddle is wide enough for. */
export function letterCapital({ width }: Pick<BearingPlace, 'width'>, sizes: Sizes): number {
  return Math.min(sizes.number * 1.05, width * 0.5)
}

/** How far each half must reach across to hold a letter that can still be read, with its pattern in sight round it. */
export function leastReach(bearing: BearingPlace, sizes: Sizes): number {
  const letter = Math.min(letterCapital(bearing, sizes), 8.5 * sizes.px)
  return Math.min(bearing.diameter / 2, letter * 2 + 3 * sizes.px)
}

/** The least room each bearing takes on the sheet, whatever stands beside it. */
export function minimalBoxes(here: OnFace, place: Projection, sizes: Sizes): readonly Box[] {
  return here.bearings.map((bearing) => {
    const { x, y, width } = bearing
    const reach = leastReach(bearing, sizes)
    return boxBetween(place(x - width / 2, y - reach), place(x + width / 2, y + reach))
  })
}
