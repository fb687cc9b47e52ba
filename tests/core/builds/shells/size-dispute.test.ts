import { describe, expect, it } from 'vitest'
import {
  bearingAt,
  buildSheet,
  drawingFacts,
  proposalsFor,
  shellsBySize,
} from '../../../../core/builds/index.ts'
import { choosing as step, mains, marked, readings, skerry } from '../main-shells.ts'
import type { Workshop } from '../workshop.ts'
import { en } from '../../../../core/words/index.ts'

const at = (shop: Workshop) => bearingAt(shop.state, mains, 'M2')
const pair = (shop: Workshop) => {
  const { upper, lower } = proposalsFor(skerry, shop.state, 'mains')[1]!
  return [upper?.grade ?? null, lower?.grade ?? null]
}
const declare = (undersize: string | null, reason?: string) => ({
  type: 'declare-undersize' as const,
  ...{ step, positions: ['M2'], undersize },
  ...(reason !== undefined && { reason }),
})

/** Declared 0.25 under, and measures 51.991 mm: standard. */
function declaredUnder(): Workshop {
  const shop = marked()
  shop.does(declare('0.25 under'))
  shop.does(readings('M2', 'journal', '51.991'))
  return shop
}

/** Declared nothing, and measures 51.741 mm: 0.25 under. */
function declaredStandard(): Workshop {
  const shop = marked()
  shop.does(readings('M2', 'journal', '51.741'))
  return shop
}

describe('a journal that measures another size than it is declared', () => {
  it('keeps the shells open, says so on the drawing, and cannot be passed by hand', () => {
    for (const shop of [declaredUnder(), declaredStandard()]) {
      expect(at(shop).basis).toBe('undecided')
      expect(pair(shop)).toEqual([null, null])
      expect(drawingFacts(en, skerry, shop.state, shop.step(step)).bearings['M2']!.flag).toBe(
        'declared size and reading differ',
      )
      const others = (['upper', 'lower'] as const).map((half) => ({
        ...{ position: 'M2', half, grade: 'T', reason: 'so' },
      }))
      expect(shop.refuses({ type: 'choose-shells', step, others })).toContain('decide which counts')
    }
  })

  it('is reported with both sizes', () => {
    expect(at(declaredUnder()).sizeDispute!.problem).toMatchObject({
      code: 'undersize-against-size',
      facts: {
        place: 'M2',
        size: { amount: 51.991, decimals: 4, isShort: false, unit: 'mm' },
        declared: '0.25 under',
        measured: null,
      },
    })
    expect(at(declaredStandard()).sizeDispute!.problem).toMatchObject({
      code: 'undersize-against-size',
      facts: {
        place: 'M2',
        size: { amount: 51.741, decimals: 4, isShort: false, unit: 'mm' },
        declared: null,
        measured: '0.25 under',
      },
    })
  })

  it('shows what each size would choose', () => {
    const shop = declaredUnder()
    // 55.006 to 55.012 less 51.991, less two walls 0.125 thicker than standard: the journal does not go in.
    expect(shellsBySize(shop.state, mains, 'M2', '0.25 under')).toMatchObject({
      upper: null,
      problem: { code: 'no-pair-inside-limits' },
    })
    // Mark G is 51.988 to 51.994 mm, and the chart has T for it.
    expect(shellsBySize(shop.state, mains, 'M2', null)).toMatchObject({
      upper: { grade: 'T', by: 'chart' },
      lower: { grade: 'T' },
    })
    expect(shellsBySize(declaredStandard().state, mains, 'M2', '0.25 under')).toMatchObject({
      upper: { grade: 'T', by: 'readings' },
      clearance: { nominal: 35_000 },
    })
  })

  it('is decided for the reading with a reason, which is printed', () => {
    const shop = declaredStandard()
    expect(shop.refusal(declare('0.25 under', ' '))).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'undersize-declared', positions: ['M2'], undersize: '0.25 under' } },
    })
    shop.does(declare('0.25 under', 'the shop card says so'))
    expect(at(shop).sizeDispute).toBeNull()
    expect(pair(shop)).toEqual(['T', 'T'])
    shop.does({ type: 'choose-shells', step, others: [] })
    expect(buildSheet(skerry, shop.entries).fits[0]!.rows[1]!.measured.sizeReason).toMatchObject({
      reason: 'the shop card says so',
      decided: { person: 'Ada' },
    })
  })

  it('is decided for what was declared: then the marks count again, not the reading', () => {
    const shop = declaredStandard()
    shop.does(declare(null, 'read on the wrong journal'))
    expect(at(shop)).toMatchObject({ basis: 'marks', disagreements: [] })
    expect(pair(shop)).toEqual(['T', 'T'])
  })

  it('is open again when the journal is measured again, or declared again without a reason', () => {
    const shop = declaredStandard()
    shop.does(declare(null, 'dirty'))
    shop.does(readings('M2', 'journal', '51.742'))
    expect(at(shop).basis).toBe('undecided')
    shop.does(declare(null, 'dirty'))
    shop.does(declare(null))
    expect(at(shop).basis).toBe('undecided')
  })

  it('is none once the readings are withdrawn', () => {
    const shop = declaredStandard()
    const withdrawn = { type: 'withdraw-readings', step, position: 'M2', part: 'journal' } as const
    shop.does({ ...withdrawn, reason: 'read on M3' })
    expect(at(shop)).toMatchObject({ sizeDispute: null, basis: 'marks' })
  })

  it('is not seen where the spec has no sizes to tell an undersize by', () => {
    const bare = {
      ...mains,
      journal: { ...mains.journal, marks: mains.journal.marks.map(({ mark }) => ({ mark })) },
    }
    expect(bearingAt(declaredStandard().state, bare, 'M2').sizeDispute).toBeNull()
  })
})
