import fc from 'fast-check'
import highsLoader from 'highs'
import { describe, expect, it } from 'vitest'
import { assignFromTray, orderList } from '../../../../core/bearing/index.ts'
import { orderWeight, stockModel } from './stock-model.ts'
import { benches } from './trays.ts'
import { checkProperty } from '../../../property.ts'
import { runs } from '../../../runs.ts'

const trays = runs(100, 500)

describe('shells from the tray against HiGHS, an independent solver', () => {
  it(`order as few and deviate as little, on ${trays} random trays`, { timeout: 120_000 }, async () => {
    const highs = await highsLoader()
    let short = 0
    let enough = 0
    checkProperty(
      fc.property(benches, ({ fit, tray, bearings }) => {
        const assignment = assignFromTray(fit, tray, bearings)
        if (!assignment.ok) throw new Error(assignment.problem.code)
        const { filled, unfilled, squaredDeviation, proved } = assignment.value
        expect(proved).toBe(true)
        expect(unfilled).toEqual([])
        expect(filled.map(({ judged }) => judged.within)).toEqual(bearings.map(() => 'inside'))
        const ordered = orderList(assignment.value).reduce((total, { count }) => total + count, 0)
        const solved = highs.solve(stockModel(fit, tray, bearings), { mip_rel_gap: 0, mip_abs_gap: 0 })
        expect(solved.Status).toBe('Optimal')
        // HiGHS holds whole numbers to 1e-6 and sums in binary; squares of half nanometres are exact here.
        expect(Math.abs(ordered * orderWeight + squaredDeviation - solved.ObjectiveValue)).toBeLessThan(1e-3)
        if (ordered > 0) short += 1
        else enough += 1
      }),
      { numRuns: trays },
    )
    expect(Math.min(short, enough)).toBeGreaterThan(trays / 25)
  })
})
