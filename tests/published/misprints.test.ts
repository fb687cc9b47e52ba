import { describe, expect, it } from 'vitest'
import { auditAfter, named, nth, type Draft } from '../core/engine/demo.ts'

/** The demo with the mains' one mark, one journal and one grade as a manual prints them. */
function printed(sizes: {
  bore: readonly [string, string]
  journal: readonly [string, string]
  wall: readonly [string, string]
  clearance: { least: string; most: string }
}) {
  const band = ([over, upTo]: readonly [string, string]) => ({ over, upTo })
  return auditAfter('skerry-3', (spec: Draft) => {
    const fit = nth(spec.fits, 0)
    fit.housing.marks = [{ mark: '1', band: band(sizes.bore) }]
    fit.journal.marks = [{ mark: 'F', band: band(sizes.journal) }]
    fit.grades = [{ ...nth(fit.grades, 0), wall: band(sizes.wall) }]
    fit.clearance = sizes.clearance
    delete fit.chart
    for (const saddle of spec.case.saddles) saddle.diameter = sizes.bore[0]
  })
}

describe('TM 5-6115-545-34, table 1-2', () => {
  const sizes = {
    bore: ['2.9700 in', '2.9705 in'],
    journal: ['2.7470 in', '2.7485 in'],
    wall: ['0.10975 in', '0.11025 in'],
  } as const

  it('prints 0.0010 to 0.0035 in; its own sizes give 0.0010 to 0.0040 in, which is doubted', () => {
    // 0.0010 in is 25.4 µm, 0.0035 in 88.9 µm, 0.0040 in 101.6 µm.
    expect(printed({ ...sizes, clearance: { least: '0.0010 in', most: '0.0035 in' } })).toEqual([
      expect.stringContaining(
        'doubt bands-leave-limits fits[0]: Main bearings, marks 1 and F: the best pair, R above and R below, can give ' +
          '25.4 to 101.6 µm; allowed is 25.4 to 88.9 µm.',
      ),
    ])
  })

  it('would be clean with the clearance that its sizes give', () => {
    expect(printed({ ...sizes, clearance: { least: '0.0010 in', most: '0.0040 in' } })).toEqual([])
  })
})

describe('TM 9-2815-254-24', () => {
  it('prints 2.7548 to 2.7533 in, the least above the most: a fault', () => {
    expect(
      printed({
        bore: ['2.7548 in', '2.7533 in'],
        journal: ['2.5960 in', '2.5965 in'],
        wall: ['0.0775 in', '0.0780 in'],
        clearance: { least: '0.0010 in', most: '0.0040 in' },
      }),
    ).toContainEqual(
      expect.stringContaining(
        'fault band-reversed fits[0].housing.marks[0].band: Main bearings, Case, mark 1',
      ),
    )
  })

  it('prints 69.920 to 69.632 mm for the same: reversed as well, and a width of 288 µm when turned round', () => {
    const turned = printed({
      bore: ['69.632 mm', '69.920 mm'],
      journal: ['65.938 mm', '65.951 mm'],
      wall: ['1.968 mm', '1.981 mm'],
      clearance: { least: '0.025 mm', most: '0.102 mm' },
    })
    expect(turned).toContainEqual(
      expect.stringContaining(
        'doubt band-wide fits[0].housing.marks[0].band: Main bearings, Case, mark 1: a band 288.0 µm wide',
      ),
    )
  })
})

describe('TM 9-2815-202-34', () => {
  it('prints two maxima for one clearance on two pages: two limits for one end float are doubted', () => {
    expect(
      auditAfter('skerry-3', (spec) =>
        Object.assign(named(spec.steps, 'end-float'), { reading: { least: '0.08 mm', most: '0.28 mm' } }),
      ),
    ).toEqual([expect.stringContaining('doubt limits-said-twice')])
  })
})
