import type { Scene, SceneRow, Shape } from '../../layout/index.ts'
import { shortAmount } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import { countsText, gaugeDecimals, mmPerCount, type GaugeUnit } from './gauge-unit.ts'
import { area, rectangle, segment, writing } from './instrument-shapes.ts'

/**
 * An outside micrometer with a vernier on its sleeve. A turn of the thimble moves it by the screw's pitch: 0.5 mm, divided into
 * 50, or 0.025 in, divided into 25 (ISO 3611; the inch screw of 40 threads). Ten divisions of the vernier are as long as nine of
 * the thimble, so that the line of the vernier which meets one of the thimble says the last digit.
 */
export interface MicrometerScale {
  readonly unit: GaugeUnit
  /** Counts in a turn, and in one division of the thimble. */
  readonly turn: number
  readonly division: number
  /** Counts between the lines of the sleeve, and between its numbers. */
  readonly sleeve: number
  readonly numbered: number
  /** What a number on the sleeve counts. */
  readonly numberedAs: number
  /** Counts that the screw can travel. */
  readonly travel: number
  /** Between the lines of the thimble round its edge, in mm. */
  readonly pitchMm: number
}

export const micrometers: Readonly<Record<GaugeUnit, MicrometerScale>> = {
  mm: {
    ...{ unit: 'mm', turn: 500, division: 10, sleeve: 500, numbered: 5000, numberedAs: 1000 },
    ...{ travel: 25_000, pitchMm: 1 },
  },
  in: {
    ...{ unit: 'in', turn: 250, division: 10, sleeve: 250, numbered: 1000, numberedAs: 1000 },
    ...{ travel: 10_000, pitchMm: 1.6 },
  },
}

/** What of the sleeve, the thimble and their edges is in sight, in mm or, up and down, in divisions of the thimble. */
const inSight = { sleeve: 9.5, thimble: 8, above: 11.2, below: 5.6 }
const vernierLong = 2.4

/**
 * The scales unrolled round the thimble's edge, from the counts above what the frame starts at. The reading is where the edge is:
 * a line of the sleeve that it has not passed yet is not seen. Whole counts, 0 to the travel.
 */
export function micrometerScene(words: Words, scale: MicrometerScale, base: number, counts: number): Scene {
  const mm = mmPerCount[scale.unit]
  const edge = counts * mm
  const from = edge - inSight.sleeve
  const [top, foot] = [-inSight.above * scale.pitchMm, inSight.below * scale.pitchMm]
  const frame = {
    left: from - 0.6,
    top: top - 2,
    width: inSight.sleeve + inSight.thimble + 1.2,
    height: foot - top + 2.8,
  }
  const shapes: readonly Shape[] = [
    rectangle('sleeve', 'gauge-face', from, top, inSight.sleeve, foot - top),
    area('thimble', 'gauge-body', [
      edge,
      top,
      edge + inSight.thimble,
      top,
      edge + inSight.thimble,
      foot,
      edge,
      foot,
    ]),
    segment('datum', 'gauge-line', [from, 0, edge, 0]),
    ...sleeveShapes(scale, counts, from),
    ...thimbleShapes(scale, counts, edge),
    ...vernierShapes(scale, edge),
    writing('range', rangeText(words, scale, base), frame.left + 0.5, top - 0.7, 0.62, 'start'),
  ]
  return { frame, shapes, rows: rowsOf(words, scale, base, counts) }
}

export function rangeText(words: Words, { unit, travel }: MicrometerScale, base: number): string {
  const decimals = gaugeDecimals[unit]
  const text = (value: number) => words.amounts.amount(shortAmount(value / 10 ** decimals, '', decimals))
  return words.practice.measure.range({ from: text(base), to: text(base + travel), unit })
}

/** Under the datum line; whole ones longer. */
function sleeveShapes({ unit, sleeve, numbered, numberedAs }: MicrometerScale, counts: number, from: number) {
  const mm = mmPerCount[unit]
  const long = unit === 'mm' ? 1000 : numbered
  const shapes: Shape[] = []
  for (let at = 0; at <= counts; at += sleeve) {
    const x = at * mm
    if (x < from + 0.2) continue
    shapes.push(segment(`sleeve/${at}`, 'gauge-line', [x, 0, x, at % long === 0 ? 2 : 1.2]))
    if (at % numbered === 0) shapes.push(writing(`sleeve/${at}/number`, String(at / numberedAs), x, 3, 0.9))
  }
  return shapes
}

function thimbleShapes({ turn, division, pitchMm, unit }: MicrometerScale, counts: number, edge: number) {
  const lines = turn / division
  const at = (counts % turn) / division
  const shapes: Shape[] = []
  for (let line = Math.ceil(at - inSight.below + 0.2); line <= at + inSight.above - 0.2; line += 1) {
    const y = -(line - at) * pitchMm
    const number = ((line % lines) + lines) % lines
    const isLong = number % 5 === 0
    shapes.push(segment(`thimble/${line}`, 'gauge-line', [edge, y, edge + (isLong ? 3.2 : 2.2), y]))
    const isNumbered = unit === 'in' || isLong
    if (isNumbered && y > (0.5 - inSight.above) * pitchMm && y < (inSight.below - 0.5) * pitchMm)
      shapes.push(writing(`thimble/${line}/number`, String(number), edge + 3.7, y, 0.75, 'start'))
  }
  return shapes
}

function vernierShapes({ pitchMm }: MicrometerScale, edge: number) {
  return Array.from({ length: 11 }, (_, line): readonly Shape[] => {
    const y = -line * 0.9 * pitchMm
    // The first lies on the datum line.
    const own = line === 0 ? [] : [segment(`vernier/${line}`, 'gauge-line', [edge - vernierLong, y, edge, y])]
    const [x, up] = line === 0 ? [edge - vernierLong - 1.4, 0.55] : [edge - vernierLong - 0.35, 0]
    return [...own, writing(`vernier/${line}/number`, String(line % 10), x, y - up, 0.62, 'end')]
  }).flat()
}

/** What is seen of each scale, one after the other, without their sum. */
function rowsOf(words: Words, scale: MicrometerScale, base: number, counts: number): readonly SceneRow[] {
  const { seen } = words.practice.measure
  const { unit, turn, division, sleeve, travel } = scale
  const plain = (about: string, text: string): SceneRow => ({ about, text, state: 'plain' })
  return [
    plain('range', seen.range({ range: rangeText(words, scale, base) })),
    plain(
      'sleeve',
      seen.sleeve({
        at: countsText(words, Math.min(Math.floor(counts / sleeve) * sleeve, travel), unit),
        unit,
      }),
    ),
    plain('thimble', seen.thimble({ line: Math.floor((counts % turn) / division) })),
    plain('vernier', seen.vernier({ line: counts % division })),
  ]
}
