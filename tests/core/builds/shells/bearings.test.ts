import { describe, expect, it } from 'vitest'
import {
  bearingAt,
  bearingsIn,
  buildSheet,
  drawingFacts,
  proposalsFor,
  recordedEvent,
  threadAt,
} from '../../../../core/builds/index.ts'
import { choosing as step, mains, marked, readings, skerry } from '../main-shells.ts'
import type { Workshop } from '../workshop.ts'
import { en } from '../../../../core/words/index.ts'

const at = (shop: Workshop, position: string) => bearingAt(shop.state, mains, position)
const pairAt = (shop: Workshop, position: string) => {
  const found = proposalsFor(skerry, shop.state, 'mains').find((each) => each.position === position)
  return [found?.upper?.grade ?? null, found?.lower?.grade ?? null]
}

describe('readings of a bearing', () => {
  it('are kept as typed, beside what they come to', () => {
    const shop = marked()
    const [event] = shop.does(
      readings('M1', 'journal', ['51,985', '2.04665 in', '51.985', '51.985', '51.984', '51.985']),
    )
    const noted = bearingsIn(shop.state, 'mains').journal['M1']!
    expect(noted.cells[0]![0]).toEqual({ typed: '51,985', unit: 'mm', length_nm: 51_985_000 })
    expect(noted.cells[0]![1]).toEqual({ typed: '2.04665 in', unit: 'mm', length_nm: 51_984_910 })
    expect(recordedEvent.shape.event.safeParse(event).success).toBe(true)
  })

  it('choose the shells by themselves where both marks are worn away', () => {
    const shop = marked('? ? ? ?', '? ? ? ?')
    shop.does(readings('M2', 'housing', '55.009'))
    expect(pairAt(shop, 'M2')).toEqual([null, null])
    shop.does(readings('M2', 'journal', '51.991'))
    // 55.009 − 51.991 = 3.018 mm; two walls of 1.490 to 1.493 leave 32 to 38 µm, middle on the target of 35.
    expect(pairAt(shop, 'M2')).toEqual(['T', 'T'])
    expect(at(shop, 'M2').basis).toBe('readings')
  })

  it('of one part go with the mark of the other', () => {
    const shop = marked('1 2 3 2', 'H ? F G')
    shop.does(readings('M2', 'journal', '51.991'))
    expect(at(shop, 'M2').sizes).toMatchObject({
      ok: true,
      value: { bore: { least: 55_006_000, most: 55_012_000 } },
    })
    expect(pairAt(shop, 'M2')).toEqual(['T', 'T'])
  })

  it('choose the same in inches as in millimetres', () => {
    const [metric, inch] = [marked('? ? ? ?', '? ? ? ?'), marked('? ? ? ?', '? ? ? ?')]
    metric.does(readings('M1', 'housing', '54.99862'))
    metric.does(readings('M1', 'journal', '51.98356'))
    // 2.1653 in = 54.99862 mm, 2.0466 in = 51.98364 mm: exact by 25.4 mm to the inch.
    inch.does(readings('M1', 'housing', '2.1653', { unit: 'in' }))
    inch.does(readings('M1', 'journal', '2.0466', { unit: 'in' }))
    expect(pairAt(inch, 'M1')).toEqual(pairAt(metric, 'M1'))
    expect(at(inch, 'M1').measured.bore!.mean).toBe(54_998_620)
  })

  it('are brought to 20 °C: a steel journal at 30 °C reads 6 µm large', () => {
    const shop = marked()
    shop.does(readings('M1', 'journal', '51.990', { at: '30' }))
    // 51.990 / (1 + 11.5e-6 × 10) = 51.98402 mm.
    expect(at(shop, 'M1').measured.journal!.mean).toBe(51_984_022)
  })

  it('asks about another unit, and refuses 900 °C, a bore below the journal and a short grid', () => {
    const shop = marked('? ? ? ?', '? ? ? ?')
    expect(shop.refuses(readings('M1', 'housing', '2.1654'))).toContain('inches')
    expect(shop.refuses(readings('M1', 'housing', '55.003', { at: '900 °C' }))).toContain('900 °C')
    expect(shop.refuses({ ...readings('M1', 'housing', '55.003'), cells: [] })).toContain('2 planes')
    shop.does(readings('M1', 'housing', '54'))
    shop.does(readings('M1', 'journal', '52.6'))
    const broad = at(shop, 'M1')
    expect(broad.sizes.ok).toBe(true)
    expect(pairAt(shop, 'M1')).toEqual([null, null])
    expect(shop.refuses(readings('M9', 'journal', '52'))).toContain('M9')
  })

  it('point out a bore that is out of round, and flag it on the drawing', () => {
    const shop = marked()
    shop.does(readings('M1', 'housing', ['55.003', '55.003', '55.012', '55.003', '55.003', '55.012']))
    expect(at(shop, 'M1').shapeFaults.map(({ code }) => code)).toEqual(['out-of-round'])
    expect(drawingFacts(en, skerry, shop.state, shop.step(step)).bearings['M1']!.flag).toBe('out of shape')
  })

  it('are weighed once, not again at each look while marks and readings stay as they are', () => {
    const shop = marked()
    const first = at(shop, 'M1')
    expect(at(shop, 'M1')).toBe(first)
    shop.does({ type: 'choose-shells', step, others: [] })
    expect(at(shop, 'M1')).toBe(first)
    shop.does(readings('M1', 'journal', '51.985'))
    expect(at(shop, 'M1')).not.toBe(first)
    expect(at(shop, 'M1').measured.journal).not.toBeNull()
  })

  it('can be withdrawn with a reason, which is printed', () => {
    const shop = marked()
    const withdrawal = { type: 'withdraw-readings', step, position: 'M1', part: 'journal' } as const
    expect(shop.refuses({ ...withdrawal, reason: 'x' })).toContain('nothing was measured')
    shop.does(readings('M1', 'journal', '51.985'))
    shop.does({ ...withdrawal, reason: 'that was M2' })
    expect(at(shop, 'M1').measured.journal).toBeNull()
    expect(buildSheet(skerry, shop.entries).corrections.at(-1)).toMatchObject({
      kind: 'readings-withdrawn',
      about: { code: 'partAt', facts: { position: 'M1', part: 'journal' } },
      reason: 'that was M2',
    })
  })
})

describe('a mark against a reading', () => {
  /** M1 is marked H, 51.982 to 51.988, and measures 51.997: what F stands for. */
  function disputed(): Workshop {
    const shop = marked()
    shop.does(readings('M1', 'journal', '51.997'))
    return shop
  }

  it('keeps the shells open and shows on the drawing, until a person decides', () => {
    const shop = disputed()
    expect(at(shop, 'M1').basis).toBe('undecided')
    expect(at(shop, 'M1').disagreements[0]).toMatchObject({ facts: { mark: 'H', wouldBe: 'F' } })
    expect(drawingFacts(en, skerry, shop.state, shop.step(step)).bearings['M1']!.flag).toBe(
      'mark and readings differ',
    )
    expect(shop.refuses({ type: 'choose-shells', step, others: [] })).toContain('do not agree')
  })

  it('cannot be passed by choosing a grade by hand', () => {
    const others = (['upper', 'lower'] as const).map((half) => ({
      position: 'M1',
      half,
      grade: 'T',
      reason: 'so',
    }))
    expect(disputed().refuses({ type: 'choose-shells', step, others })).toContain('do not agree')
  })

  it('is decided with a reason; either way the shells follow', () => {
    const shop = disputed()
    const decide = { type: 'decide-basis', step, position: 'M1' } as const
    expect(shop.refusal({ ...decide, by: 'readings', reason: ' ' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'basis-decided', by: 'readings', position: 'M1' } },
    })
    shop.does({ ...decide, by: 'marks', reason: 'the micrometer was dropped' })
    expect(pairAt(shop, 'M1')).toEqual(['T', 'T'])
    shop.does({ ...decide, by: 'readings', reason: 'measured twice' })
    // 55.000 to 55.006 less 51.997: 3.003 to 3.009 mm; two R leave 29 to 41 µm, nominal 35.
    expect(pairAt(shop, 'M1')).toEqual(['R', 'R'])
    shop.does({ type: 'choose-shells', step, others: [] })
    expect(shop.state.shells['mains']![0]).toMatchObject({ grade: 'R', by: 'readings' })
    const [row] = buildSheet(skerry, shop.entries).fits[0]!.rows
    expect(row!.measured.decision).toMatchObject({ by: 'readings', reason: 'measured twice' })
  })

  it('is open again when the readings behind a kept mark, or the mark, change', () => {
    const shop = disputed()
    shop.does({ type: 'decide-basis', step, position: 'M1', by: 'marks', reason: 'dirty' })
    shop.does(readings('M1', 'journal', '51.998'))
    expect(at(shop, 'M1').basis).toBe('undecided')
    shop.does({ type: 'decide-basis', step, position: 'M1', by: 'readings', reason: 'clean now' })
    shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'G G F G' })
    expect(at(shop, 'M1').decision).toBeNull()
  })

  it('within the stated uncertainty is none', () => {
    const shop = marked()
    shop.does(readings('M1', 'journal', '51.990', { uncertainty: '3' }))
    expect(at(shop, 'M1').basis).toBe('marks')
  })
})

describe('a stated uncertainty', () => {
  it('draws the limits in, and a gauge that can prove nothing gives no shells', () => {
    const shop = marked('? ? ? ?', '? ? ? ?')
    shop.does(readings('M1', 'housing', '55.009', { uncertainty: '20' }))
    shop.does(readings('M1', 'journal', '51.991', { uncertainty: '20' }))
    // ± 28.3 µm together; limits of 20 to 50 leave nothing between them.
    expect(pairAt(shop, 'M1')).toEqual([null, null])
    expect(at(shop, 'M1').byReadings!.problem!.code).toBe('gauge-too-coarse')
  })
})

describe('a reground journal', () => {
  it('is measured again, takes walls thicker by half, and its undersize is kept with the choice', () => {
    const shop = marked()
    shop.does({ type: 'declare-undersize', step, positions: ['M2'], undersize: '0.25 under' })
    expect(pairAt(shop, 'M2')).toEqual([null, null])
    expect(at(shop, 'M2').fit.grades[0]!.wall).toEqual({ over: 1_609_000, upTo: 1_612_000 })
    shop.does(readings('M2', 'journal', '51.741'))
    expect(at(shop, 'M2').groundTo).toEqual({ ok: true, value: '0.25 under' })
    // The case as marked, the journal 0.25 smaller than the 51.991 that T is right for: T again, undersize.
    expect(pairAt(shop, 'M2')).toEqual(['T', 'T'])
    shop.does({ type: 'choose-shells', step, others: [] })
    const chosen = shop.state.shells['mains']!.filter(({ position }) => position === 'M2')
    expect(chosen.map(({ undersize }) => undersize)).toEqual(['0.25 under', '0.25 under'])
    expect(buildSheet(skerry, shop.entries).fits[0]!.rows[1]!.clearance!.nominal).toBe(35_000)
  })

  it('is refused for an undersize that the spec does not have', () => {
    const declared = { type: 'declare-undersize' as const, step, positions: ['M1'], undersize: '9.99 under' }
    expect(marked().refuses(declared)).toContain('9.99 under')
  })
})

describe('a plastic thread', () => {
  it('is held against the clearance, once shells are chosen, also when they are in', () => {
    const shop = marked()
    shop.does({ type: 'choose-shells', step, others: [] })
    shop.does({ type: 'fit-half', step: 'fit-mains', position: 'M1', half: 'upper' })
    const cardStep = { typed: '0.013', unit: 'mm' } as const
    shop.does({ type: 'read-thread', step, position: 'M1', width: { typed: '0.038', unit: 'mm' }, cardStep })
    expect(threadAt(shop.state, mains, 'M1')!.check!.verdict).toBe('agrees')
    shop.does({ type: 'read-thread', step, position: 'M1', width: { typed: '0.005', unit: 'in' }, cardStep })
    expect(threadAt(shop.state, mains, 'M1')!.check!.verdict).toBe('says-looser')
    expect(shop.state.shells['mains']).toHaveLength(8)
  })
})
