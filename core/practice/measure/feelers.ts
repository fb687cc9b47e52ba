import type { Scene, Shape } from '../../layout/index.ts'
import type { Words } from '../../words/index.ts'
import { countsText, mmPerCount, type GaugeUnit } from './gauge-unit.ts'
import { rectangle, writing } from './instrument-shapes.ts'

/** The blades of a feeler gauge, in counts, rising. */
export const blades: Readonly<Record<GaugeUnit, readonly number[]>> = {
  mm: [40, 50, 60, 70, 80, 100, 150, 200, 250],
  in: [15, 20, 30, 40, 50, 60, 80, 100],
}

/** So many times as large as they are, so that the thinnest can be distinguished from the next. */
const enlarged = 20

/** Blades on edge between two faces, as thick as they are to each other and to the gap; along, they are cut short. */
export function feelerScene(words: Words, unit: GaugeUnit, stack: readonly number[]): Scene {
  const thick = stack.map((counts) => counts * mmPerCount[unit] * enlarged)
  const gap = thick.reduce((sum, each) => sum + each, 0)
  const frame = { left: 0, top: -6, width: Math.max(24, gap * 1.5), height: gap + 12 }
  const [faceRight, bladeRight] = [0.62 * frame.width, 0.72 * frame.width]
  const capital = Math.min(1, ...thick.map((each) => each * 0.62))
  let top = 0
  const shapes: Shape[] = [
    rectangle('face/upper', 'gauge-body', 0.6, -5, faceRight, 5),
    rectangle('face/lower', 'gauge-body', 0.6, gap, faceRight, 5),
  ]
  stack.forEach((counts, place) => {
    const height = thick[place]!
    const [id, middle] = [`blade/${place}`, top + height / 2]
    shapes.push(rectangle(id, 'gauge-face', 1.6, top, bladeRight, height))
    shapes.push(
      writing(`${id}/number`, countsText(words, counts, unit), bladeRight + 2.2, middle, capital, 'start'),
    )
    top += height
  })
  const { feeler } = words.practice.measure
  return {
    ...{ frame, shapes },
    rows: stack.map((counts, place) => ({
      ...{ about: `blade/${place}`, state: 'plain' },
      text: feeler.blade({ blade: countsText(words, counts, unit), unit }),
    })),
  }
}
