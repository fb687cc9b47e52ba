import type { Scene, Shape } from '../layout/index.ts'
import type { Words } from '../words/index.ts'
import { countsText, mmPerCount, type GaugeUnit } from './gauge-unit.ts'
import { rectangle, segment, writing } from './instrument-shapes.ts'

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
export function flattenedMm({ unit, threadMm }: StripScale, counts: number): number {
  return (Math.PI * threadMm ** 2) / 4 / (counts * mmPerCount[unit])
}

const [cardLeft, gap, long] = [8, 1.1, 7]

/** With the scale moved along the strip until one of its bands, counted from 0, stands beside it. */
export function stripScene(words: Words, scale: StripScale, counts: number, beside: number): Scene {
  const { unit, bands } = scale
  const { strip } = words.practice.measure
  const width = flattenedMm(scale, counts)
  let top = 0
  const places = bands.map((band) => {
    const height = flattenedMm(scale, band)
    const place = { band, height, middle: top + height / 2 }
    top += height + gap
    return place
  })
  const moved = places[beside]!.middle
  const frame = { left: 0, top: -7.5, width: 21, height: 15 }
  const shapes: readonly Shape[] = [
    rectangle('journal', 'gauge-body', 0.5, -7, cardLeft - 0.7, 14),
    rectangle('strip', 'gauge-strip', 1, -width / 2, cardLeft - 1, width),
    rectangle('card', 'gauge-face', cardLeft, -moved - gap, frame.width - cardLeft - 0.5, top + gap),
    ...places.flatMap(({ band, height, middle }, place): readonly Shape[] => [
      rectangle(`band/${place}`, 'gauge-strip', cardLeft, middle - moved - height / 2, long, height),
      writing(
        `band/${place}/number`,
        countsText(band, unit),
        cardLeft + long + 0.5,
        middle - moved,
        0.62,
        'start',
      ),
    ]),
    segment('edge', 'gauge-line', [cardLeft, -7.2, cardLeft, 7.2]),
  ].filter((shape) => isInSight(shape, 7.3))
  const place = places[beside]!
  const fit = place.band === counts ? 'alike' : place.band > counts ? 'narrower' : 'wider'
  return {
    ...{ frame, shapes },
    rows: [
      {
        about: 'strip',
        text: strip.beside({ band: countsText(place.band, unit), unit, fit }),
        state: 'plain',
      },
    ],
  }
}

/** A shape that begins beyond the sheet is left off it. */
function isInSight(shape: Shape, reach: number): boolean {
  if (shape.kind === 'text') return Math.abs(shape.y) < reach
  if (shape.kind !== 'line' || shape.id === 'card') return true
  const ys = shape.points.filter((_, at) => at % 2 === 1)
  return ys.every((y) => Math.abs(y) < reach)
}
