import { describe, expect, it } from 'vitest'
import { auditAfter, demoDraft, named, nth, type Draft } from '../engine/demo.ts'

/** The lines that speak of one kind of finding. */
const found = (code: string, change: (spec: Draft) => void, id = 'skerry-3') =>
  auditAfter(id, change).filter((line) => line.includes(` ${code} `))

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
      expect.stringMatching(
        /doubt washer-steps-wide endFloat\.washers: .*changes by 0\.122 mm.*only 0\.120 mm apart/,
      ),
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
    expect(said).toContain('0.0050 in, is above the maximum, 0.0025 in')
    const [metric] = found('least-above-most', (spec) =>
      Object.assign(spec.endFloat!, { least: '0.127 mm', most: '0.063 mm' }),
    )
    expect(metric).toContain('0.127 mm, is above the maximum, 0.063 mm')
  })
})

describe('the bounds of places', () => {
  it('one bore has no neighbour to run into', () => {
    const bored = (cylinders: number, bankAngle: string) =>
      found('bores-overlap', (spec) => Object.assign(spec.case, { cylinders, bankAngle, pitch: '80 mm' }))
    expect(bored(1, '0 °')).toEqual([])
    expect(bored(2, '0 °')).toHaveLength(1)
    expect(bored(2, '90 °')).toEqual([])
    expect(bored(3, '90 °')).toHaveLength(1)
    // A bank of one each, however narrow the V is.
    expect(bored(2, '1 °')).toEqual([])
  })

  it('bores may touch no more than meet', () => {
    expect(found('bores-overlap', (spec) => (spec.case.pitch = '84 mm'))).toHaveLength(1)
    expect(found('bores-overlap', (spec) => (spec.case.pitch = '84.1 mm'))).toEqual([])
  })

  it('a part is far out beyond four pitches across, and two pitches past the last saddles along', () => {
    const { pitch, saddles } = demoDraft('skerry-3').case
    const mm = (text: string) => Number.parseFloat(text)
    const across = 4 * mm(pitch)
    const last = Math.max(...saddles.map(({ at }) => mm(at))) + 2 * mm(pitch)
    const first = Math.min(...saddles.map(({ at }) => mm(at))) - 2 * mm(pitch)
    const moved = (x: number, y: number) =>
      found('far-outside', (spec) => (named(spec.fasteners, 'rod-1').at = [`${x} mm`, `${y} mm`])).length
    expect([moved(100, across), moved(100, -across), moved(last, 0), moved(first, 0)]).toEqual([0, 0, 0, 0])
    expect([
      moved(100, across + 0.1),
      moved(100, -across - 0.1),
      moved(last + 0.1, 0),
      moved(first - 0.1, 0),
    ]).toEqual([1, 1, 1, 1])
  })

  it('a bead may pass a bolt at half of both their widths', () => {
    // A bolt of the flange, M8 with a bead of 3 mm: their middles are 5.5 mm apart at least.
    const bead = named(demoDraft('skerry-3').beads, 'plus')
    const [[x], y] = [nth(bead.path, 0), Number.parseFloat(nth(bead.path, 0)[1])]
    const width = Number.parseFloat(bead.width)
    const along = `${Number.parseFloat(x) + 30} mm`
    const radius =
      Number.parseFloat(
        (named(demoDraft('skerry-3').fastenerGroups, 'flange-bolts').thread as { diameter: string }).diameter,
      ) / 2
    const passing = (apart: number) =>
      found('bead-over-hole', (spec) => {
        spec.beads = [named(spec.beads, 'plus')]
        nth(spec.beads, 0).path = [bead.path[0]!, [`${Number.parseFloat(x) + 60} mm`, `${y} mm`]]
        nth(spec.beads, 0).closed = false
        spec.fasteners = spec.fasteners.filter(({ id, face }) => face !== bead.face || id === 'flange-13')
        spec.case.dowels = []
        named(spec.fasteners, 'flange-13').at = [along, `${y + apart} mm`]
        spec.procedures = spec.procedures.filter(({ face }) => face !== bead.face)
        const runs = new Set(spec.procedures.map(({ id }) => id))
        spec.steps = spec.steps.filter((step) => step.kind !== 'run-procedure' || runs.has(step.procedure))
        spec.steps = spec.steps.filter((step) => step.kind !== 'lay-bead' || step.bead === 'plus')
        const ids = new Set(spec.steps.map(({ id }) => id))
        for (const step of spec.steps) step.after = (step.after ?? []).filter((each) => ids.has(each))
        for (const caution of spec.cautions) caution.steps = caution.steps?.filter((each) => ids.has(each))
      })
    expect(passing(radius + width / 2)).toEqual([])
    expect(passing(radius + width / 2 - 0.01)).toHaveLength(1)
  })
})

describe('the bounds of pulls', () => {
  const rods = (spec: Draft) => named(spec.procedures, 'rods')

  it('limits to one side alone are measured from the target, to both sides by the nearer', () => {
    const limits = (least: string | undefined, most: string | undefined, target = '15 N·m') =>
      found('tolerance-too-fine', (spec) => {
        const pass = rods(spec).passes.find(({ kind }) => kind === 'torque')!
        for (const limit of ['least', 'most']) Reflect.deleteProperty(pass, limit)
        Object.assign(pass, { target, ...(least && { least }), ...(most && { most }) })
      }).length
    // A hundredth of 15 N·m is 0.15.
    expect(limits('14.85 N·m', undefined)).toBe(0)
    expect(limits('14.86 N·m', undefined)).toBe(1)
    expect(limits('14.9 N·m', '16 N·m')).toBe(1)
    expect(limits('14 N·m', '15.1 N·m')).toBe(1)
    expect(limits('14 N·m', '16 N·m')).toBe(0)
    // One of 100 to either side, exactly.
    expect(limits('99 N·m', '101 N·m', '100 N·m')).toBe(0)
    // All of the room on one side: 0.3 N·m is ± 0.15.
    expect(limits('15 N·m', '15.3 N·m')).toBe(0)
    expect(limits('15 N·m', '15.2 N·m')).toBe(1)
  })

  it('wrenches read from 1 to 1500 N·m', () => {
    const target = (torque: string) =>
      found('no-usual-wrench', (spec) => {
        const pass = rods(spec).passes.find(({ kind }) => kind === 'torque')!
        for (const limit of ['least', 'most']) Reflect.deleteProperty(pass, limit)
        Object.assign(pass, { target: torque })
      }).length
    expect(['1 N·m', '1500 N·m'].map(target)).toEqual([0, 0])
    expect(['0.99 N·m', '1501 N·m'].map(target)).toEqual([1, 1])
  })

  it('a turn is counted from the last torque, and begins again after loosening', () => {
    const order = rods(demoDraft('skerry-3')).orders[0]!.id
    const passes = (...kinds: readonly object[]) =>
      found('turn-leaves-elastic-line', (spec) => {
        rods(spec).passes = kinds.map((kind) => ({ order, ...kind })) as never
      })
    const torque = { kind: 'torque', target: '15 N·m' }
    const turn = { kind: 'angle', target: '95 °' }
    const loosen = { kind: 'loosen' }
    expect(passes(torque, turn)).toEqual([])
    expect(passes(torque, turn, turn)).toHaveLength(1)
    expect(passes(torque, turn, loosen, torque, turn)).toEqual([])
    expect(passes(torque, turn, torque, turn)).toEqual([])
    // From nothing a turn goes further than from a torque: not by 15 N·m's worth, but it is told by its pass.
    expect(passes(torque, turn, turn)[0]).toContain('pass 3')
  })

  it('a turn without a torque before it, or after loosening, begins from no load at all', () => {
    const order = rods(demoDraft('skerry-3')).orders[0]!.id
    const preload = (...kinds: readonly object[]) => {
      const lines = found('turn-leaves-elastic-line', (spec) => {
        rods(spec).passes = kinds.map((kind) => ({ order, ...kind })) as never
      })
      return Number(/takes Rod bolts to ([\d.]+) kN/.exec(lines[0] ?? '')?.[1])
    }
    const turn = (target: string) => ({ kind: 'angle', target })
    const loosened = [{ kind: 'torque', target: '15 N·m' }, { kind: 'loosen' }]
    // On an elastic line through nothing, twice the turn is twice the load; the loads are printed to 0.1 kN.
    expect(preload(turn('360 °')) - 2 * preload(turn('180 °'))).toBeCloseTo(0, 0)
    expect(Math.abs(preload(turn('360 °')) - 2 * preload(turn('180 °')))).toBeLessThan(0.16)
    expect(preload(...loosened, turn('180 °'))).toBe(preload(turn('180 °')))
    expect(preload({ kind: 'torque', target: '15 N·m' }, turn('180 °'))).toBeGreaterThan(
      preload(turn('180 °')) + 1,
    )
  })

  it('an angle is a full turn at most, and more than nothing', () => {
    const angle = (target: string) =>
      auditAfter('skerry-3', (spec) => {
        const pass = nth(rods(spec).passes, 2)
        for (const limit of ['least', 'most']) Reflect.deleteProperty(pass, limit)
        Object.assign(pass, { target })
      }).filter((line) => / angle-(beyond|missing)/.test(line)).length
    expect(['360 °', '1 °'].map(angle)).toEqual([0, 0])
    expect(['361 °', '0 °'].map(angle)).toEqual([1, 1])
  })
})

describe('steps in a ring', () => {
  it('are named without those that only wait for the ring', () => {
    const [line] = found('steps-in-a-ring', (spec) => {
      nth(spec.steps, 0).after = ['lay-crank']
      named(spec.steps, 'lay-crank').after = ['rods-free']
      named(spec.steps, 'rods-free').after = ['lay-crank']
    })
    expect(line).toMatch(/The steps “(Lay crank”, “Rods free|Rods free”, “Lay crank)” wait/)
  })
})
