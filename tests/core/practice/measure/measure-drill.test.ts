import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import {
  drillsOf,
  instrumentScene,
  judgeReading,
  measureDrill,
  readingOf,
  strips,
  typedCounts,
  type MeasureQuestion,
} from '../../../../core/practice/index.ts'
import { en } from '../../../../core/words/index.ts'
import { checkProperty } from '../../../property.ts'
import { anyEngine } from '../../layout/any-engine.ts'
import { demo, demos } from '../../layout/demos.ts'
import { readBoreGauge, readFeelers, readMicrometer, readStrip } from './instrument-reader.ts'

const seeds = fc.integer({ min: 0, max: 10_000 }).map((round) => `round ${round}`)
const units = ['mm', 'in'] as const
const drawn = (question: MeasureQuestion, beside = 0) => instrumentScene(en, question, beside)

/** What an independent reader makes of the drawing. */
function readBack(question: MeasureQuestion): number | null {
  const { unit } = question
  switch (question.kind) {
    case 'micrometer':
      return readMicrometer(drawn(question), unit)
    case 'bore-gauge':
      return readBoreGauge(drawn(question), unit)
    case 'feelers':
      return readFeelers(drawn(question), unit).onBlades
    case 'strip':
      return readStrip(
        strips[unit].bands.map((_, beside) => drawn(question, beside)),
        unit,
      )
    default:
      return question satisfies never
  }
}

describe('a drawn instrument, read back from where its lines stand', () => {
  it('is a micrometer that reads to the last mark over all of its travel', () => {
    let read = 0
    for (const unit of units) {
      const [base, travel, turn] = unit === 'mm' ? [50_000, 25_000, 500] : [20_000, 10_000, 250]
      for (let shows = 0; shows <= travel; shows += 1) {
        // Each seventh, and every one about a whole turn, where the sleeve gains a line.
        const aboutATurn = shows % turn < 3 || shows % turn > turn - 3
        if (shows % 7 !== 0 && !aboutATurn) continue
        const question = { kind: 'micrometer', unit, base, shows } as const
        if (readMicrometer(drawn(question), unit) !== base + shows)
          expect({ shows, read: readMicrometer(drawn(question), unit) }).toEqual({
            shows,
            read: base + shows,
          })
        read += 1
      }
    }
    expect(read).toBeGreaterThan(5000)
  })

  it('is a bore gauge that reads every line either way', () => {
    let read = 0
    for (const unit of units)
      for (let larger = -49; larger <= 49; larger += 1) {
        if (larger === 0) continue
        const question = { kind: 'bore-gauge', unit, ring: 62_000, larger } as const
        expect(readBoreGauge(drawn(question), unit)).toBe(62_000 + larger)
        read += 1
      }
    expect(read).toBe(196)
  })

  it('is a strip as wide as one band of its scale and no other', () => {
    const questions = units.flatMap((unit) =>
      strips[unit].bands.map((clearance) => ({ kind: 'strip', unit, clearance }) as const),
    )
    expect(questions).toHaveLength(14)
    for (const question of questions) expect(readBack(question)).toBe(question.clearance)
  })

  it('is a stack of blades as thick as the gap, and as what stands on them', () => {
    for (const unit of units)
      for (let round = 0; round < 200; round += 1) {
        const { questions } = measureDrill(demo('skerry-3'), `${unit} ${round}`)
        const question = questions.find((each) => each.kind === 'feelers')!
        const { gap, onBlades } = readFeelers(drawn(question), question.unit)
        expect([gap, onBlades]).toEqual([readingOf(question), readingOf(question)])
      }
  })
})

describe('a measure drill', () => {
  it('asks on any engine for what its drawings read', () => {
    let questions = 0
    checkProperty(
      fc.property(fc.oneof(fc.constantFrom(...demos), anyEngine), seeds, (spec, seed) => {
        for (const question of measureDrill(spec, seed).questions) {
          expect(readBack(question)).toBe(readingOf(question))
          expect(judgeReading(question, readingOf(question))).toBeNull()
          questions += 1
        }
      }),
      { numRuns: 100, leastShare: 0.95 },
    )
    expect(questions).toBeGreaterThanOrEqual(500)
  })

  it('is about the size of the engine’s own bearings, the same for the same seed, and there without any saddle', () => {
    const spec = demo('skerry-3')
    const mm = spec.case.saddles[0]!.diameter / 1e6
    for (const question of measureDrill(spec, 'a').questions)
      if (question.kind === 'micrometer' && question.unit === 'mm')
        expect([question.base <= mm * 1000, question.base + 25_000 > mm * 1000]).toEqual([true, true])
    expect(measureDrill(spec, 'a')).toEqual(measureDrill(spec, 'a'))
    const bare: EngineSpec = { ...spec, case: { ...spec.case, saddles: [] }, fits: [], procedures: [] }
    expect(drillsOf(bare)).toContain('measure')
    expect(measureDrill(bare, 'a').questions).toHaveLength(5)
  })
})

describe('a reading that was typed', () => {
  it('is taken with a point or a comma, to the last mark', () => {
    expect(typedCounts('62.005', 'mm')).toBe(62_005)
    expect(typedCounts(' 62,005 ', 'mm')).toBe(62_005)
    expect(typedCounts('2.4409', 'in')).toBe(24_409)
    expect(typedCounts('0.0015', 'in')).toBe(15)
    expect(typedCounts('62.0055', 'mm')).toBe(62_005.5)
    for (const typed of ['', 'sixty', '-1', '1.2.3']) expect(typedCounts(typed, 'mm')).toBeNull()
  })

  const micrometer = { kind: 'micrometer', unit: 'mm', base: 50_000, shows: 12_873 } as const
  const inches = { kind: 'micrometer', unit: 'in', base: 20_000, shows: 4409 } as const
  const gauge = { kind: 'bore-gauge', unit: 'mm', ring: 62_000, larger: -18 } as const
  const stack = { kind: 'feelers', unit: 'mm', stack: [100, 50, 200] } as const
  const strip = { kind: 'strip', unit: 'mm', clearance: 38 } as const

  it.each([
    ['62.373: half a millimetre less, one turn', micrometer, 62_373, -500, 'turn'],
    ['12.873: without the 50 mm that it begins at', micrometer, 12_873, -50_000, 'base'],
    ['62.870: without the vernier', micrometer, 62_870, -3, 'vernier'],
    ['62.883: a line of the thimble too far', micrometer, 62_883, 10, 'thimble'],
    ['2.4659 in: one turn of 0.025 in more', inches, 24_659, 250, 'turn'],
    ['62.018: the wrong way round the dial', gauge, 62_018, 36, 'sign'],
    ['0.018: the dial alone', gauge, 18, -61_964, 'ring'],
    ['61.983: a line less', gauge, 61_983, 1, 'lines'],
    ['0.30: without the blade of 0.05', stack, 300, -50, 'blade'],
    ['0.050: another band', strip, 50, 12, 'band'],
    ['0.045: no band at all', strip, 45, 7, 'other'],
    ['61.111: nothing that is often misread', micrometer, 61_111, -1762, 'other'],
  ] as const)('says what was misread: %s', (_, question, counts, off, misread) => {
    expect(judgeReading(question, counts)).toEqual({ off, misread })
  })
})
