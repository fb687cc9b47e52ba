import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clampMap, type Flange, type FlangePull } from '../../../../core/joint/index.ts'
import { newtons } from '../../../../core/quantity/index.ts'
import { solvedFromScratch } from './from-scratch.ts'
import { bar, dense, ring, ringWithWall } from './flanges.ts'
import { checkProperty } from '../../../property.ts'

/** As a share of the largest load there is at any time. */
const closely = 1e-9

const flanges: readonly (readonly [string, Flange])[] = [
  ['a bar of which much lifts', bar(25, { bolts: [4, 12, 20] })],
  ['a bar on a soft bed', bar(25, { bolts: [4, 12, 20], bedMpa: 3000 })],
  ['a heavy bar', bar(25, { bolts: [4, 12, 20], bedMpa: 6000, weightN: 150 })],
  ['a ring', ring(4, { bolts: [1, 6, 11, 13, 18, 23], bedMpa: 6000 })],
  ['a ring with a wall', ringWithWall(4, { bolts: [0, 4, 8, 12, 16, 25], bedMpa: 12_000 })],
]

describe.each(flanges)('%s, against a general solver that begins from scratch at each pull', (_, flange) => {
  it('holds the same after every pull', () => {
    const pull = fc
      .record({
        bolt: fc.constantFrom(...flange.bolts.map(({ id }) => id)),
        how: fc.oneof(
          fc.integer({ min: 0, max: 20_000 }).map((load) => ({ kind: 'set' as const, to: newtons(load) })),
          fc.integer({ min: 1, max: 60 }).map((turn) => ({ kind: 'turn' as const, byMm: turn / 1000 })),
        ),
      })
      .map(({ bolt, how }): FlangePull => ({ pass: 0, bolt, ...how }))
    checkProperty(
      fc.property(fc.array(pull, { minLength: 1, maxLength: 6 }), (pulls) => {
        const ours = clampMap(flange, pulls).afterPulls.map(({ loads }) => loads)
        const theirs = solvedFromScratch(flange, pulls, dense)
        const most = Math.max(1, ...theirs.flat())
        theirs.forEach((loads, after) =>
          loads.forEach((load, bolt) =>
            expect(Math.abs(load - ours[after]![bolt]!) / most).toBeLessThan(closely),
          ),
        )
      }),
      { numRuns: 8 },
    )
  })
})
