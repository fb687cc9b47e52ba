import type { Scene, Shape } from '../layout/index.ts'
import type { Words } from '../words/index.ts'
import { countsText, mmPerCount, type GaugeUnit } from './gauge-unit.ts'
import { rectangle, writing } from './instrument-shapes.ts'

/** The blades of a feeler gauge, in counts, rising. */
export const blades: Readonly<Record<GaugeUnit, readonly number[]>> = {
  mm: [40, 50, 60, 70, 80, 100, 150, 200, 250],
  in: [15, 20, 30, 40, 50, 60, 80, 100],
}

/** Blades on edge between two faces, as thick as they are; along, they are cut short. What is drawn is 2.4 mm long. */
export function feelerScene(words: Words, unit: GaugeUnit, stack: readonly number[]): Scene {
  const thick = stack.map((counts) => counts * mmPerCount[unit])
  const gap = thick.reduce((sum, each) => sum + each, 0)
  const frame = { left: 0, top: -0.32, width: Math.max(1.7, gap * 1.9), height: gap + 0.64 }
  const capital = Math.min(0.05, ...thick.map((each) => each * 0.62))
  let top = 0
  const shapes: Shape[] = [
    rectangle('face/upper', 'gauge-body', 0.04, -0.24, 0.66 * frame.width, 0.24),
    rectangle('face/lower', 'gauge-body', 0.04, gap, 0.66 * frame.width, 0.24),
  ]
  stack.forEach((counts, place) => {
    const height = thick[place]!
    shapes.push(rectangle(`blade/${place}`, 'gauge-face', 0.1, top, 0.72 * frame.width, height))
    shapes.push(
      writing(
        `blade/${place}/number`,
        countsText(counts, unit),
        0.72 * frame.width + 0.12,
        top + height / 2,
        capital,
        'start',
      ),
    )
    top += height
  })
  const { feeler } = words.practice.measure
  return {
    ...{ frame, shapes },
    rows: stack.map((counts, place) => ({
      ...{ about: `blade/${place}`, state: 'plain' },
      text: feeler.blade({ blade: countsText(counts, unit), unit }),
    })),
  }
}
