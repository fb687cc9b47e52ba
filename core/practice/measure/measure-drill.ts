import type { EngineSpec } from '../../engine/index.ts'
import type { Scene } from '../../layout/index.ts'
import { inMillimetres, parseReading } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import { boreGaugeScene, dials } from './bore-gauge.ts'
import { Chance } from '../chance.ts'
import { blades, feelerScene } from './feelers.ts'
import { gaugeDecimals, mmPerCount, type GaugeUnit } from './gauge-unit.ts'
import { micrometers, micrometerScene } from './micrometer.ts'
import { strips, stripScene } from './plastic-strip.ts'

/** An instrument that is read, with what it stands at. Everything in whole counts of its unit: 0.001 mm, or 0.0001 in. */
export type MeasureQuestion = { readonly unit: GaugeUnit } & (
  | { readonly kind: 'feelers'; readonly stack: readonly number[] }
  | { readonly kind: 'strip'; readonly clearance: number }
  /** Of one that measures from `base` on: it shows how much more. */
  | { readonly kind: 'micrometer'; readonly base: number; readonly shows: number }
  /** By how much the bore is larger than the ring that the gauge was set in; below 0 where it is smaller. */
  | { readonly kind: 'bore-gauge'; readonly ring: number; readonly larger: number }
)

export interface MeasureDrill {
  readonly questions: readonly MeasureQuestion[]
}

/** For an engine whose saddles have no size. */
const usualSizeMm = 60

/** Instruments as they are read at the bearings of an engine, and about their size: there is something to measure on any. */
export function measureDrill({ case: { saddles } }: EngineSpec, seed: string): MeasureDrill {
  const chance = new Chance(seed)
  const sizeMm = saddles.length === 0 ? usualSizeMm : inMillimetres(chance.one(saddles).diameter)
  const units = () => chance.one(['mm', 'in'] as const)
  const [feelers, strip, gauge] = [units(), units(), units()]
  return {
    questions: chance.shuffled<MeasureQuestion>([
      { kind: 'feelers', unit: feelers, stack: stackOf(chance, feelers) },
      { kind: 'strip', unit: strip, clearance: chance.one(strips[strip].bands) },
      micrometerQuestion(chance, 'mm', sizeMm),
      micrometerQuestion(chance, 'in', sizeMm),
      boreQuestion(chance, gauge, sizeMm),
    ]),
  }
}

/** Two to four different blades, the thinnest in the middle, where it does not bend. */
function stackOf(chance: Chance, unit: GaugeUnit): readonly number[] {
  const chosen = chance
    .shuffled(blades[unit])
    .slice(0, 2 + chance.below(3))
    .toSorted((a, b) => b - a)
  return [...chosen.filter((_, at) => at % 2 === 0), ...chosen.filter((_, at) => at % 2 === 1).toReversed()]
}

function micrometerQuestion(chance: Chance, unit: GaugeUnit, sizeMm: number): MeasureQuestion {
  const { travel } = micrometers[unit]
  const base = Math.floor(sizeMm / mmPerCount[unit] / travel) * travel
  return { kind: 'micrometer', unit, base, shows: chance.below(travel + 1) }
}

function boreQuestion(chance: Chance, unit: GaugeUnit, sizeMm: number): MeasureQuestion {
  const half = dials[unit].lines / 2
  const ring = Math.round(sizeMm / mmPerCount[unit] / 10) * 10
  const lines = 1 + chance.below(half - 1)
  return { kind: 'bore-gauge', unit, ring, larger: chance.one([1, -1]) * lines }
}

/** What the instrument reads, in counts of its unit. */
export function readingOf(question: MeasureQuestion): number {
  switch (question.kind) {
    case 'feelers':
      return question.stack.reduce((sum, each) => sum + each, 0)
    case 'strip':
      return question.clearance
    case 'micrometer':
      return question.base + question.shows
    case 'bore-gauge':
      return question.ring + question.larger
    default:
      return question satisfies never
  }
}

/** Reads what was typed, point or comma, in the unit of the instrument; in counts, with a fraction where more digits were typed. */
export function typedCounts(typed: string, unit: GaugeUnit) {
  const read = parseReading(typed)
  if (!read.ok) return null
  // What was typed to the last mark is whole: binary must not stand in the way.
  const counts = read.value * 10 ** gaugeDecimals[unit]
  return Math.abs(counts - Math.round(counts)) < 1e-6 ? Math.round(counts) : counts
}

/**
 * What was misread. `turn`: by whole turns of the thimble. `base`: without what the micrometer begins at, or with another.
 * `vernier`: the last digit, with the thimble read right. `thimble`: a line of the thimble. `sign`: the way of the dial's pointer.
 * `ring`: only what the dial shows. `lines`: a few lines of the dial. `blade`: a blade of the stack was left out. `band`: another
 * band of the scale. `other`: none of these.
 */
export type Misread = MisreadScale | 'ring' | 'lines' | 'blade' | 'band' | 'other'

type MisreadScale = 'turn' | 'base' | 'vernier' | 'thimble' | 'sign'

/** Null where the reading is right to the last mark. `off` is in counts: above 0 where more was read. */
export function judgeReading(
  question: MeasureQuestion,
  counts: number,
): { readonly off: number; readonly misread: Misread } | null {
  const off = counts - readingOf(question)
  return off === 0 ? null : { off, misread: misreadOf(question, off, counts) }
}

function misreadOf(question: MeasureQuestion, off: number, counts: number): Misread {
  switch (question.kind) {
    case 'feelers':
      return question.stack.includes(-off) ? 'blade' : 'other'
    case 'strip':
      return strips[question.unit].bands.includes(counts) ? 'band' : 'other'
    case 'bore-gauge':
      if (off === -2 * question.larger) return 'sign'
      if (counts === Math.abs(question.larger)) return 'ring'
      return Math.abs(off) <= 10 ? 'lines' : 'other'
    case 'micrometer': {
      const { turn, division, travel } = micrometers[question.unit]
      if (off % travel === 0) return 'base'
      if (off % turn === 0) return 'turn'
      if (Math.floor(counts / division) === Math.floor(readingOf(question) / division)) return 'vernier'
      return off % division === 0 ? 'thimble' : 'other'
    }
    default:
      return question satisfies never
  }
}

/** The instrument as it stands; `beside` is the band that the scale of a plastic strip is moved to, counted from 0. */
export function instrumentScene(words: Words, question: MeasureQuestion, beside: number): Scene {
  const { unit } = question
  switch (question.kind) {
    case 'feelers':
      return feelerScene(words, unit, question.stack)
    case 'strip':
      return stripScene(words, strips[unit], question.clearance, beside)
    case 'micrometer':
      return micrometerScene(words, micrometers[unit], question.base, question.shows)
    case 'bore-gauge':
      return boreGaugeScene(words, dials[unit], question.ring, question.larger)
    default:
      return question satisfies never
  }
}

/** The same with its frame made as wide and as high as a sheet is, the instrument in the middle of it. */
export function onSheetOf(scene: Scene, widthPx: number, heightPx: number): Scene {
  const { left, top, width, height } = scene.frame
  const wider = Math.max(width, (height * widthPx) / heightPx)
  const higher = Math.max(height, (width * heightPx) / widthPx)
  const frame = {
    ...{ left: left - (wider - width) / 2, top: top - (higher - height) / 2 },
    ...{ width: wider, height: higher },
  }
  return { ...scene, frame }
}
