import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { torqueOf } from '../../../../core/quantity/index.ts'
import { usableFor, type WrenchSetup, type TorqueWindow } from '../../../../core/tightening/index.ts'
import { en } from '../../../../core/words/index.ts'
import { valueOf, setupOf, large, medium, small, window } from '../wrench-rack.ts'
import { checkProperty } from '../../../property.ts'
import { lineOf } from '../../../problem-line.ts'

const today = '2026-06-15'
const rack = [setupOf(large()), setupOf(medium({})), setupOf(small())]

function choose(window: TorqueWindow, setups: readonly WrenchSetup[] = rack) {
  const { usable, refused, advice } = valueOf(usableFor(setups, window, today))
  return {
    usable,
    ids: usable.map(({ wrench }) => wrench.id),
    refusals: refused.map(({ problem }) => lineOf(problem)),
    advice: advice.map(lineOf),
  }
}

describe('the choice of a wrench', () => {
  it('says of each that cannot be used why: 12 N·m with wrenches from 60, from 20 and from 4 N·m', () => {
    const { ids, refusals } = choose(window(12, 11, 13))
    expect(ids).toEqual(['small'])
    expect(refusals).toEqual([
      'wrench-below-range: name=Large click wrench, setting=12, starts=60 N·m, below=fifth',
      'wrench-below-range: name=Medium click wrench, setting=12, starts=20 N·m, below=fifth',
    ])
  })

  it('takes either end of the usable range', () => {
    expect(choose(window(20, 19, 21)).ids.toSorted()).toEqual(['medium', 'small'])
    expect(choose(window(100, 95, 105)).ids).toContain('medium')
    expect(choose(window(300, 285, 315)).ids).toEqual(['large'])
  })

  it('gives other reasons: past the scale, below the lowest mark, below what is stated', () => {
    const setups = [
      setupOf(small()),
      setupOf(medium({ range: { least: '40 N·m', most: '100 N·m' } })),
      setupOf(medium({ statedMinimum: '35 N·m' })),
    ]
    expect(choose(window(30, 28, 32), setups).refusals).toEqual([
      'wrench-above-range: name=Small click wrench, setting=30, ends=20 N·m',
      'wrench-below-range: name=Medium click wrench, setting=30, starts=40 N·m, below=mark',
      'wrench-below-range: name=Medium click wrench, setting=30, starts=35 N·m, below=stated',
    ])
  })

  it('puts the one first that strays least from the target: marks at 62 beat marks at 60 and 65', () => {
    const { ids, usable } = choose(window(62, 55, 68))
    expect(ids).toEqual(['medium', 'large'])
    expect(usable.map(({ setting }) => en.amounts.amount(setting))).toEqual(['62 N·m', '60 N·m'])
    expect(usable[1]?.rounding).toBeCloseTo(-2 / 62, 12)
  })

  it('then the one in the middle of its range: 60 N·m lies there for 20 to 100, and at the start for 60 to 300', () => {
    expect(choose(window(60, 57, 63)).ids).toEqual(['medium', 'large'])
  })

  it('or the larger one where the value lies nearer its middle: 95 N·m is near the end of 20 to 100', () => {
    expect(choose(window(95, 90, 100)).ids).toEqual(['large', 'medium'])
  })

  it('puts one whose calibration is over or not known after those whose calibration holds', () => {
    const calibrated = (id: string, on: string) => setupOf({ ...large(), id, calibration: { on, cycles: 0 } })
    const setups = [
      setupOf(medium({ calibration: undefined })),
      calibrated('over', '2025-06-14'),
      calibrated('holds', '2025-06-15'),
    ]
    expect(choose(window(62, 55, 68), setups).ids).toEqual(['holds', 'medium', 'over'])
  })

  it('sets in the unit of the scale and says what its marks cost: 24 N·m at 18 lbf·ft is 24.4', () => {
    const feet = medium({
      range: { least: '10 lbf·ft', most: '50 lbf·ft' },
      scale: { unit: 'lbf·ft', step: 1 },
    })
    const [set] = choose(window(24, 22.5, 26), [setupOf(feet)]).usable
    expect(set && en.amounts.amount(set.setting)).toBe('18 lbf·ft')
    expect(set?.torque).toBeCloseTo(24.4047, 4) // 18 × 1.355818
    expect(set?.rounding).toBeCloseTo(0.01686, 5)
    expect(set?.least).toBeCloseTo(24.4047 / 1.04, 4) // it may click 4 % above what the fastener has (ISO 6789)
    expect(set?.most).toBeCloseTo(24.4047 / 0.96, 4)
    expect(set?.reach).toBe('within')
  })

  it('sets lower for an adapter straight on, and judges the range by the setting', () => {
    const foot = { offset: '100 mm', angle: '0 °' }
    const long = medium({ length: '300 mm' })
    expect(choose(window(40, 38, 42), [setupOf(long, foot)]).usable[0]).toMatchObject({
      exact: 30,
      setting: { amount: 30, unit: 'N·m' },
    })
    expect(choose(window(24, 22, 26), [setupOf(long, foot)]).refusals).toEqual([
      'wrench-below-range: name=Medium click wrench, setting=18, starts=20 N·m, below=fifth',
    ])
  })

  it('calculates what the mark gives through the adapter: 21 N·m at three quarters is 15.75, its mark 16, which gives 21.3', () => {
    const foot = { offset: '100 mm', angle: '0 °' }
    const long = medium({ length: '300 mm', range: { least: '10 N·m', most: '50 N·m' } })
    const [set] = choose(window(21, 20, 22.5), [setupOf(long, foot)]).usable
    expect(set?.mark).toBe(16)
    expect(set?.torque).toBeCloseTo(21.3333, 4)
  })

  it('refuses marks that miss the window altogether', () => {
    const coarse = large({ range: { least: '10 N·m', most: '100 N·m' }, statedMinimum: '10 N·m' })
    const { refusals } = choose(window(22.4, 22, 23), [setupOf(coarse)])
    expect(refusals).toEqual([
      'wrench-steps-too-coarse: name=Large click wrench, setting=22.4 N·m, step=5 N·m, from=22, upTo=23 N·m',
    ])
  })

  it('warns when the wrench may leave the window: 50 N·m that clicks within 4 % is 48.08 to 52', () => {
    const [inside] = choose(window(50, 48, 52.1), [setupOf(medium({}))]).usable
    expect(inside).toMatchObject({ reach: 'within', warnings: [] })
    const [outside] = choose(window(50, 49, 52), [setupOf(medium({}))]).usable
    expect(outside?.reach).toBe('may-leave')
    expect(outside?.warnings.map(lineOf)).toEqual([
      'wrench-may-leave-window: name=Medium click wrench, from=48.1, upTo=52.1 N·m, from=49, upTo=52 N·m',
    ])
  })

  it('does not warn of limits that the spec does not give', () => {
    const usual = { ...window(50, 49, 52), tolerance: 'usual' } as const
    expect(choose(usual, [setupOf(medium({}))]).usable[0]?.warnings).toEqual([])
  })

  it('keeps a wrench that is due for calibration, with a warning', () => {
    const old = medium({ calibration: { on: '2025-06-14', cycles: 12 } })
    expect(choose(window(50, 47, 53), [setupOf(old)]).usable[0]?.warnings).toMatchObject([
      { code: 'calibration-overdue' },
    ])
  })

  it('advises a smaller wrench before choking up, when all are too large', () => {
    expect(choose(window(3, 2.8, 3.2)).advice).toEqual([
      'no-wrench-fits: target=3 N·m, from=3 N·m, to=15 N·m',
      'choking-up',
    ])
  })

  it('advises choking up where one of them is too large, though another is too small', () => {
    const codes = valueOf(
      usableFor([setupOf(small()), setupOf(large())], window(30, 28, 32), today),
    ).advice.map(({ code }) => code)
    expect(codes).toEqual(['no-wrench-fits', 'choking-up'])
  })

  it('advises nothing where one fits, and sets it for a small screw of less than 1 N·m as well', () => {
    expect(choose(window(12, 11, 13)).advice).toEqual([])
    const tiny = small({ range: { least: '0.2 N·m', most: '1 N·m' }, scale: { unit: 'N·m', step: 0.01 } })
    expect(choose(window(0.6, 0.55, 0.65), [setupOf(tiny)]).usable[0]?.mark).toBeCloseTo(0.6, 9)
  })

  it('advises in the unit of the wrenches that are there', () => {
    const inches = small({
      range: { least: '20 lbf·in', most: '100 lbf·in' },
      scale: { unit: 'lbf·in', step: 1 },
    })
    // 24 N·m is 212 lbf·in, and five times that 1062.
    expect(choose(window(24, 22, 26), [setupOf(inches)]).advice[0]).toContain(
      'no-wrench-fits: target=212 lbf·in, from=212 lbf·in, to=1062 lbf·in',
    )
  })

  it('advises a larger wrench alone, when all are too small', () => {
    expect(choose(window(400, 390, 410)).advice).toHaveLength(1)
  })

  it('advises even where there is no wrench at all', () => {
    expect(choose(window(24, 22, 26), []).advice[0]).toContain(
      'no-wrench-fits: target=24 N·m, from=24 N·m, to=120 N·m',
    )
  })

  it('refuses a target of 0 N·m', () => {
    const refused = usableFor(rack, window(0, 0, 0), today)
    expect(refused.ok ? null : refused.problem.code).toBe('wrench-target-zero')
  })

  it('never offers a setting outside the usable part of a scale, nor a nominal torque outside the window', () => {
    const scales = [
      ...[0.1, 0.25, 0.5, 1, 2.5, 5].map((step) => ({ unit: 'N·m', step }) as const),
      ...[0.1, 0.25, 0.5, 1, 2.5].map((step) => ({ unit: 'lbf·ft', step }) as const),
      ...[1, 2, 5, 10, 25].map((step) => ({ unit: 'lbf·in', step }) as const),
      ...[0.01, 0.02, 0.05, 0.1, 0.25].map((step) => ({ unit: 'kgf·m', step }) as const),
    ]
    const targets = fc.double({ min: 15, max: 110, noNaN: true })
    checkProperty(
      fc.property(targets, fc.constantFrom(...scales), (target, { unit, step }) => {
        const limits = window(target, target * 0.97, target * 1.03)
        const one = medium({ scale: { unit, step } })
        for (const { mark, torque } of choose(limits, [setupOf(one)]).usable) {
          expect(mark).toBeGreaterThanOrEqual(20 * (1 - 1e-9))
          expect(mark).toBeLessThanOrEqual(100 * (1 + 1e-9))
          expect(Math.abs(torque / target - 1)).toBeLessThanOrEqual(0.03 + 1e-9)
          const inSteps = mark / torqueOf(step, unit)
          expect(Math.abs(inSteps - Math.round(inSteps))).toBeLessThan(1e-6)
        }
      }),
    )
  })
})
