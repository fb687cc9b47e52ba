import type { Scene, Shape } from '../../layout/index.ts'
import type { Words } from '../../words/index.ts'
import { countsText, mmPerCount, type GaugeUnit } from './gauge-unit.ts'
import { rectangle, writing } from './instrument-shapes.ts'

/**
 * A thread of plastic that was pressed flat in the clearance, beside the scale that came with it. What was round and thin is
 * then wide: its section keeps its area, so that half the clearance makes it twice as wide.
 */
export interface StripScale {
  readonly unit: GaugeUnit
  /** Diameter of the thread, in mm. */
  readonly threadMm: number
  /** The clearances that the scale has a band for, in counts, rising. */
  readonly bands: readonly number[]
}

export const strips: Readonly<Record<GaugeUnit, StripScale>> = {
  mm: { unit: 'mm', threadMm: 0.3, bands: [25, 30, 38, 50, 62, 75, 90] },
  in: { unit: 'in', threadMm: 0.3, bands: [10, 12, 15, 20, 25, 30, 35] },
}

/** How wide it comes out, in mm, with the section of a round thread made a rectangle as high as the clearance. */
function flattenedMm({ unit, threadMm }: StripScale, counts: number): number {
  return (Math.PI * threadMm ** 2) / 4 / (counts * mmPerCount[unit])
}

const [cardLeft, gap, long] = [8, 1.1, 7]
/** What is in sight of both, up and down from the strip. */
const reach = 7

/** With the scale moved along the strip until one of its bands, counted from 0, stands beside it. */
export function stripScene(words: Words, scale: StripScale, counts: number, beside: number): Scene {
  const { unit, bands } = scale
  const { strip } = words.practice.measure
  const width = flattenedMm(scale, counts)
  let top = 0
  const places = bands.map((band, place) => {
    const height = flattenedMm(scale, band)
    const middle = top + height / 2
    top += height + gap
    return { band, height, middle, place }
  })
  const moved = places[beside]!.middle
  const frame = { left: 0, top: -7.5, width: 21, height: 15 }
  const inSight = places.filter(({ height, middle }) => Math.abs(middle - moved) + height / 2 < reach)
  const shapes: readonly Shape[] = [
    rectangle('journal', 'gauge-body', 0.5, -reach, cardLeft - 0.5, 2 * reach),
    rectangle('strip', 'gauge-pressed', 1, -width / 2, cardLeft - 1, width),
    rectangle('card', 'gauge-face', cardLeft, -moved - gap, frame.width - cardLeft - 0.5, top + gap),
    ...inSight.flatMap(({ band, height, middle, place }): readonly Shape[] => [
      rectangle(`band/${place}`, 'gauge-strip', cardLeft, middle - moved - height / 2, long, height),
      writing(
        `band/${place}/number`,
        countsText(words, band, unit),
        cardLeft + long + 0.5,
        middle - moved,
        0.62,
        'start',
      ),
    ]),
  ]
  const { band } = places[beside]!
  const fit = band === counts ? 'alike' : band > counts ? 'narrower' : 'wider'
  return {
    ...{ frame, shapes },
    rows: [
      {
        about: 'strip',
        text: strip.beside({ band: countsText(words, band, unit), unit, fit }),
        state: 'plain',
      },
    ],
  }
}
