import type { Scene, Shape } from '../../layout/index.ts'
import type { Words } from '../../words/index.ts'
import { countsText, type GaugeUnit } from './gauge-unit.ts'
import { disc, segment, writing } from './instrument-shapes.ts'

/**
 * The dial of a two-point bore gauge that was set to 0 in a ring. Its plunger is pushed in by a bore that is smaller than the
 * ring, and the pointer then goes clockwise (ISO 463); it goes anticlockwise in a larger one. Numbers count from 0 both ways.
 */
export interface DialScale {
  readonly unit: GaugeUnit
  /** Lines round the dial, of one count each: an even number. */
  readonly lines: number
  /** Lines from one number to the next, and the longer lines between them. */
  readonly numbered: number
  readonly long: number
}

export const dials: Readonly<Record<GaugeUnit, DialScale>> = {
  mm: { unit: 'mm', lines: 100, numbered: 10, long: 5 },
  in: { unit: 'in', lines: 100, numbered: 10, long: 5 },
}

const radius = 28

/** From the counts by which the bore is larger than the ring: fewer than half of the lines either way. */
export function boreGaugeScene(
  words: Words,
  { unit, lines, numbered, long }: DialScale,
  ring: number,
  larger: number,
): Scene {
  const frame = { left: -34, top: -34, width: 68, height: 70 }
  const at = (turn: number, from: number): readonly [number, number] => {
    const angle = turn * 2 * Math.PI
    return [from * Math.sin(angle), -from * Math.cos(angle)]
  }
  const scale = Array.from({ length: lines }, (_, line): readonly Shape[] => {
    const turn = line / lines
    const length = line % numbered === 0 ? 4 : line % long === 0 ? 3.1 : 2.2
    const mark = segment(`line/${line}`, 'gauge-line', [...at(turn, radius - length), ...at(turn, radius)])
    if (line % numbered !== 0) return [mark]
    const [x, y] = at(turn, radius - 6.4)
    return [mark, writing(`line/${line}/number`, String(Math.min(line, lines - line)), x, y, 2.2)]
  }).flat()
  const turn = -larger / lines
  const count = countsText(words, 1, unit)
  const { dial, seen } = words.practice.measure
  const shapes: readonly Shape[] = [
    disc('rim', 'gauge-body', 0, 0, radius + 3),
    disc('face', 'gauge-face', 0, 0, radius),
    ...scale,
    writing('count', dial.count({ count, unit }), 0, 8, 1.9),
    writing('ring', dial.ring({ ring: countsText(words, ring, unit), unit }), 0, 12, 1.9),
    segment('pointer', 'gauge-pointer', [...at(turn + 0.5, 6), ...at(turn, radius - 2.4)]),
    { ...disc('hub', 'gauge-strip', 0, 0, 1.6), layer: 'parts' },
  ]
  return {
    ...{ frame, shapes },
    rows: [
      { about: 'ring', text: seen.ring({ ring: countsText(words, ring, unit), unit }), state: 'plain' },
      {
        about: 'pointer',
        text: seen.pointer({
          ...{ lines: Math.abs(larger), count, unit },
          way: larger === 0 ? 'none' : larger < 0 ? 'clockwise' : 'anticlockwise',
        }),
        state: 'plain',
      },
    ],
  }
}
