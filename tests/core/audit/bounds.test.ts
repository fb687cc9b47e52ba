import { describe, expect, it } from 'vitest'
import { auditAfter, demoDraft, named, nth, type Draft } from '../engine/demo.ts'
import { found } from './found.ts'

// What is just allowed is allowed, and the next step beyond is not.
describe('the bounds of sizes', () => {
  const journal = (over: string) => (spec: Draft) => {
    const fit = nth(spec.fits, 1)
    nth(fit.journal.marks, 1).band = { over, upTo: '47.993 mm' }
  }

  it('a band is as wide as 100 µm without a doubt', () => {
    expect(found('band-wide', journal('47.893 mm'), 'tarn-4')).toEqual([])
    expect(found('band-wide', journal('47.892 mm'), 'tarn-4')).toHaveLength(1)
  })

  it('a band over nothing, from a size to the same size, is the wrong way round', () => {
    expect(found('band-reversed', journal('47.993 mm'), 'tarn-4')).toHaveLength(1)
    expect(found('band-reversed', journal('47.992 mm'), 'tarn-4')).toEqual([])
  })

  it('a bore lies up to half a millimetre off what is drawn, on either side', () => {
    const drawn = (diameter: string) =>
      found('bore-far-from-nominal', (spec) => (nth(spec.case.saddles, 0).diameter = diameter))
    // The bands begin at 55.000, 55.006 and 55.012 mm.
    expect(drawn('55.499 mm')).toEqual([])
    expect(drawn('55.500 mm')).toHaveLength(1)
    expect(drawn('54.513 mm')).toEqual([])
    expect(drawn('54.500 mm')).toHaveLength(3)
  })

  it('a chart that leaves one position out leaves it nothing to choose by', () => {
    const charted = (positions: readonly string[]) =>
      found('nothing-to-choose-by', (spec) => {
        const fit = nth(spec.fits, 0)
        for (const { marks } of [fit.housing, fit.journal]) for (const mark of marks) delete mark.band
        for (const cell of fit.chart ?? []) cell.positions = [...positions]
      })
    expect(charted(nth(demoDraft('skerry-3').fits, 0).positions)).toEqual([])
    expect(charted(['M1', 'M2'])).toHaveLength(1)
  })

  it('the least and the most of a clearance may be one size', () => {
    const most = (size: string) =>
      found('least-above-most', (spec) =>
        Object.assign(nth(spec.fits, 0).clearance, { least: '30 µm', most: size, target: '30 µm' }),
      )
    expect(most('30 µm')).toEqual([])
    expect(most('29.9 µm')).toHaveLength(1)
  })

  it('an aim lies within its limits, both included', () => {
    const aim = (target: string) =>
      found('target-outside-limits', (spec) =>
        Object.assign(nth(spec.fits, 0).clearance, { least: '20 µm', most: '50 µm', target }),
      )
    expect(['20 µm', '50 µm'].flatMap(aim)).toEqual([])
    expect(['19.9 µm', '50.1 µm'].map(aim).map((lines) => lines.length)).toEqual([1, 1])
  })

  it('a service limit is the most of a new bearing at least', () => {
    const limit = (serviceLimit: string) =>
      found('service-limit-below-most', (spec) =>
        Object.assign(nth(spec.fits, 0).clearance, { most: '50 µm', serviceLimit }),
      )
    expect(limit('50 µm')).toEqual([])
    expect(limit('49.9 µm')).toHaveLength(1)
  })

  it('an undersize is 2 mm at most, and is named once', () => {
    const sizes = (...undersizes: readonly (readonly [string, string])[]) =>
      auditAfter('skerry-3', (spec) => {
        nth(spec.fits, 0).undersizes = undersizes.map(([name, undersize]) => ({ name, undersize }))
      }).filter((line) => line.includes(' undersize-'))
    expect(sizes(['2.00', '2 mm'])).toEqual([])
    expect(sizes(['2.01', '2.001 mm'])).toEqual([expect.stringContaining('doubt undersize-large')])
    expect(sizes(['a', '0.25 mm'], ['b', '0.25 mm'])).toEqual([
      expect.stringContaining('fault undersize-twice'),
    ])
    expect(sizes(['a', '0.25 mm'], ['a', '0.50 mm'])).toEqual([
      expect.stringContaining('fault undersize-twice'),
    ])
    expect(sizes(['a', '0.25 mm'], ['b', '0.50 mm'])).toEqual([])
  })

  it('walls of an undersize are thicker by half of it, within what they are rounded to', () => {
    // skerry-3: the first grade of the mains, and 0.25 mm under.
    const [first] = nth(demoDraft('skerry-3').fits, 0).grades
    const { grade, wall } = first!
    const { over, upTo } = wall as { over: string; upTo: string }
    const more = (size: string, by: number) => `${(parseFloat(size) + by).toFixed(3)} mm`
    const lines = (by: number, named = grade) =>
      auditAfter('skerry-3', (spec) => {
        nth(spec.fits, 0).undersizes = [
          {
            name: '0.25 under',
            undersize: '0.25 mm',
            walls: [{ grade: named, wall: { over: more(over, by), upTo: more(upTo, by) } }],
          },
        ]
      })
    expect([lines(0.125), lines(0.128), lines(0.122)]).toEqual([[], [], []])
    expect(lines(0.129)).toEqual([
      expect.stringContaining('doubt undersize-wall-off fits[0].undersizes[0].walls[0]'),
    ])
    // Misprint of TM 9-2815-225-34&P: the whole undersize.
    expect(lines(0.25)).toEqual([
      expect.stringContaining('fault undersize-wall-full fits[0].undersizes[0].walls[0]'),
    ])
    expect(lines(0.125, 'ZZ')).toEqual([expect.stringContaining('fault undersize-grade-unknown')])
  })

  it('each grade of an undersize has one wall', () => {
    const { grade, wall } = nth(nth(demoDraft('skerry-3').fits, 0).grades, 0)
    const { over, upTo } = wall as { over: string; upTo: string }
    const thicker = {
      grade,
      wall: {
        over: `${(parseFloat(over) + 0.125).toFixed(3)} mm`,
        upTo: `${(parseFloat(upTo) + 0.125).toFixed(3)} mm`,
      },
    }
    expect(
      auditAfter('skerry-3', (spec) => {
        nth(spec.fits, 0).undersizes = [
          { name: '0.25 under', undersize: '0.25 mm', walls: [thicker, thicker] },
        ]
      }),
    ).toEqual([expect.stringContaining('fault undersize-grade-twice fits[0].undersizes[0].walls[1]')])
  })

  it('a worn wall is no thicker than the thinnest new one', () => {
    const thinnest = (nth(nth(demoDraft('skerry-3').fits, 0).grades, 0).wall as { over: string }).over
    const worn = (size: string) => found('worn-wall-above-new', (spec) => (nth(spec.fits, 0).wornWall = size))
    expect(worn(thinnest)).toEqual([])
    expect(worn(`${(parseFloat(thinnest) + 0.001).toFixed(3)} mm`)).toHaveLength(1)
  })

  it('a taper for a length has a limit and two planes with a distance, which lie within the bearing', () => {
    const measuring = (change: object) =>
      auditAfter('skerry-3', (spec) => {
        nth(spec.fits, 0).measuring = { planes: 2, directions: 2, taper: '5 µm', ...change }
      })
    expect(measuring({ taperPer: '25 mm', planesApart: '12 mm' })).toEqual([])
    for (const lacking of [
      {},
      { planesApart: '12 mm', taper: undefined },
      { planesApart: '12 mm', planes: 1 },
    ])
      expect(measuring({ taperPer: '25 mm', ...lacking })).toEqual([
        expect.stringContaining('fault taper-length-incomplete fits[0].measuring.taperPer'),
      ])
    const widths = demoDraft('skerry-3').case.saddles.map(({ width }) => width)
    const narrowest = [...widths].sort((one, other) => parseFloat(one) - parseFloat(other))[0]!
    expect(measuring({ taperPer: '25 mm', planesApart: narrowest })).toEqual([
      expect.stringContaining('doubt planes-beyond-bearing fits[0].measuring.planesApart'),
    ])
  })

  it('washers may meet at their edges', () => {
    const rows = (floatFrom: string) =>
      found('washers-overlap', (spec) => {
        spec.endFloat!.washers = [
          { name: 'thin', thickness: '2 mm', floatFrom: '0.10 mm', floatTo: '0.20 mm' },
          { name: 'thick', thickness: '2.1 mm', floatFrom, floatTo: '0.30 mm' },
        ]
      })
    expect(rows('0.20 mm')).toEqual([])
    expect(rows('0.199 mm')).toHaveLength(1)
  })

  it('washers by thickness alone are no two alike, and no step between two pairs is wider than the limits are apart', () => {
    // skerry-3: 0.08 to 0.20 mm, 0.12 apart.
    const washers = (...thicknesses: string[]) =>
      auditAfter('skerry-3', (spec) => {
        spec.endFloat!.washers = thicknesses.map((thickness, index) => ({ name: `w${index}`, thickness }))
      })
    expect(washers('2.50 mm', '2.56 mm')).toEqual([])
    expect(washers('2.50 mm', '2.50 mm')).toEqual([
      expect.stringContaining('fault washer-thickness-twice endFloat.washers[1].thickness'),
    ])
    expect(washers('2.50 mm', '2.561 mm')).toEqual([
      expect.stringMatching(/doubt washer-steps-wide endFloat\.washers: step=0\.122 mm, range=0\.12 mm/),
    ])
    const mixed = auditAfter('skerry-3', (spec) => {
      spec.endFloat!.washers = ['2.50 mm', '2.60 mm'].map((thickness) => ({ name: thickness, thickness }))
      spec.endFloat!.mixed = true
    })
    expect(mixed).toEqual([])
  })

  it('washers are all in the table or none is', () => {
    expect(
      found('washers-half-tabled', (spec) => {
        delete nth(spec.endFloat?.washers, 1).floatTo
      }),
    ).toHaveLength(1)
    const withoutEnds = found('washers-half-tabled', (spec) => {
      for (const washer of spec.endFloat?.washers ?? []) delete washer.floatTo
    })
    expect(withoutEnds).toHaveLength(3)
    expect(
      auditAfter('skerry-3', (spec) => {
        spec.endFloat!.mixed = true
      }),
    ).toEqual([expect.stringContaining('fault washers-mixed-tabled endFloat.mixed')])
  })

  it('values of whole thousandths of a millimetre were entered in millimetres, though they are whole inches as well', () => {
    // 25.4 mm is one inch; 0.127 mm is 0.005 in.
    const [said] = found('least-above-most', (spec) =>
      Object.assign(spec.endFloat!, { least: '0.127 mm', most: '0.0635 mm' }),
    )
    expect(said).toContain('least-above-most endFloat: least=0.005 in, most=0.0025 in')
    const [metric] = found('least-above-most', (spec) =>
      Object.assign(spec.endFloat!, { least: '0.127 mm', most: '0.063 mm' }),
    )
    expect(metric).toContain('least-above-most endFloat: least=0.127 mm, most=0.063 mm')
  })
})

describe('steps in a ring', () => {
  it('are named without those that only wait for the ring', () => {
    const [line] = found('steps-in-a-ring', (spec) => {
      nth(spec.steps, 0).after = ['lay-crank']
      named(spec.steps, 'lay-crank').after = ['rods-free']
      named(spec.steps, 'rods-free').after = ['lay-crank']
    })
    expect(line).toMatch(/steps=(Lay crank Rods free|Rods free Lay crank)$/)
  })
})
