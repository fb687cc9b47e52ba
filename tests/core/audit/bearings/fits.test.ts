import { describe, expect, it } from 'vitest'
import { auditAfter, nth, type Draft } from '../../engine/demo.ts'

type DraftFit = Draft['fits'][number]

const mains = (change: (fit: DraftFit) => void) => auditAfter('skerry-3', (spec) => change(nth(spec.fits, 0)))
/** The big ends of the four have no chart: their bands decide. */
const withoutChart = (change: (fit: DraftFit) => void) =>
  auditAfter('tarn-4', (spec) => change(nth(spec.fits, 1)))

describe('the bands of marks', () => {
  it('the wrong way round are a fault', () => {
    expect(
      mains((fit) => (nth(fit.housing.marks, 1).band = { over: '55.012 mm', upTo: '55.006 mm' })),
    ).toContain('fault band-reversed fits[0].housing.marks[1].band: over=55.012 mm, upTo=55.006 mm')
  })

  it('that overlap are a fault', () => {
    expect(
      mains((fit) => (nth(fit.journal.marks, 1).band = { over: '51.990 mm', upTo: '51.996 mm' })),
    ).toContain('fault bands-overlap fits[0].journal.marks[0]: first=G, second=F')
  })

  it('that leave a gap are doubted', () => {
    expect(
      mains((fit) => (nth(fit.journal.marks, 1).band = { over: '51.988 mm', upTo: '51.992 mm' })),
    ).toContain('doubt bands-gap fits[0].journal.marks[0]: first=G, second=F, from=51.992 mm, to=51.994 mm')
  })

  it('that are missing for one mark and not for the others are doubted', () => {
    expect(mains((fit) => delete nth(fit.housing.marks, 2).band)).toEqual([
      'doubt band-missing fits[0].housing.marks[2]',
    ])
  })

  it('may be missing altogether where a chart decides', () => {
    expect(
      mains((fit) => {
        for (const { marks } of [fit.housing, fit.journal]) for (const mark of marks) delete mark.band
        for (const grade of fit.grades) delete grade.wall
      }),
    ).toEqual([])
  })

  it('may not be missing where nothing else decides', () => {
    expect(withoutChart((fit) => delete nth(fit.housing.marks, 0).band)).toContain(
      'fault nothing-to-choose-by fits[1]: fit=Big ends',
    )
  })

  it('as wide as no bearing has are doubted: a slip of a digit', () => {
    expect(
      withoutChart((fit) => (nth(fit.journal.marks, 1).band = { over: '47.693 mm', upTo: '47.993 mm' })),
    ).toContain('doubt band-wide fits[1].journal.marks[1].band: width=300 µm')
  })

  it('far from the bore that is drawn are doubted', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.case.saddles, 0).diameter = '54 mm'))).toContain(
      'doubt bore-far-from-nominal fits[0].housing.marks[0].band: band=55 mm, bearing=M1, nominal=54 mm',
    )
  })
})

describe('grades', () => {
  it('that are not listed from thin to thick are a fault: neighbours would not be neighbours', () => {
    expect(withoutChart((fit) => fit.grades.reverse())).toEqual([
      expect.stringContaining(
        'fault grades-not-ascending fits[1].grades[1]: fit=Big ends, first=W, second=Q',
      ),
      expect.stringContaining(
        'fault grades-not-ascending fits[1].grades[2]: fit=Big ends, first=Q, second=P',
      ),
    ])
  })

  it('whose walls overlap are doubted', () => {
    expect(
      withoutChart((fit) => (nth(fit.grades, 1).wall = { over: '1.982 mm', upTo: '1.986 mm' })),
    ).toContain('doubt grades-overlap fits[1].grades[1]: fit=Big ends, first=P, second=Q')
  })

  it('that look alike are a fault', () => {
    expect(
      mains((fit) => Object.assign(nth(fit.grades, 3), { colour: '#CC79A7', pattern: 'slant' })),
    ).toEqual(['fault grades-look-alike fits[0].grades[0]: fit=Main bearings, first=R, second=U'])
  })

  it('may share a colour when the pattern differs', () => {
    expect(mains((fit) => (nth(fit.grades, 3).colour = '#CC79A7'))).toEqual([])
  })
})

describe('undersizes', () => {
  it('that nobody grinds are doubted: 0.25 in for 0.25 mm', () => {
    expect(mains((fit) => (fit.undersizes = [{ name: '0.25 under', undersize: '0.25 in' }]))).toEqual([
      'doubt undersize-large fits[0].undersizes[0].undersize: fit=Main bearings, name=0.25 under, undersize=6.35 mm',
    ])
  })

  it('that are there twice are a fault', () => {
    expect(mains((fit) => fit.undersizes?.push({ name: 'second', undersize: '0.25 mm' }))).toEqual([
      'fault undersize-twice fits[0].undersizes[2]: fit=Main bearings, name=second, undersize=0.25 mm',
    ])
  })
})

it('a saddle in two fits is a fault', () => {
  expect(
    auditAfter('skerry-3', (spec) => {
      const copy = structuredClone(nth(spec.fits, 0))
      spec.fits.push({ ...copy, id: 'again', name: 'Mains again', positions: ['M2'] })
    }),
  ).toContain(
    'fault position-in-two-fits fits[2].positions: position=M2, first=Main bearings, second=Mains again',
  )
})

describe('a chart', () => {
  it('with a mark that is not stamped is a fault', () => {
    expect(mains((fit) => (nth(fit.chart, 0).housing = '7'))).toContain(
      'fault chart-mark-unknown fits[0].chart[0].housing: fit=Main bearings, part=Case, mark=7, known=1 2 3',
    )
  })

  it('with a grade that is not made is a fault', () => {
    expect(mains((fit) => (nth(fit.chart, 4).lower = 'Z'))).toEqual([
      'fault chart-grade-unknown fits[0].chart[4].lower: fit=Main bearings, housing=2, journal=G, grade=Z, known=R S T U V',
    ])
  })

  it('with a cell missing is doubted', () => {
    expect(mains((fit) => fit.chart?.splice(5, 1))).toEqual([
      'doubt chart-cell-absent fits[0].chart: fit=Main bearings, housing=2, journal=H, positions=M1 M2 M3 M4',
    ])
  })

  it('with two cells for one bearing is a fault', () => {
    expect(mains((fit) => fit.chart?.push({ housing: '2', journal: 'G', upper: 'T', lower: 'T' }))).toEqual([
      'fault chart-cell-twice fits[0].chart[9]: fit=Main bearings, housing=2, journal=G',
    ])
  })

  it('may have a cell for some saddles beside the one for all', () => {
    expect(
      mains((fit) =>
        fit.chart?.push({ housing: '2', journal: 'G', upper: 'S', lower: 'T', positions: ['M1', 'M4'] }),
      ),
    ).toEqual([])
  })

  it('that speaks of some saddles only leaves the others to the bands', () => {
    expect(
      mains((fit) => {
        for (const cell of fit.chart ?? []) cell.positions = ['M1', 'M2', 'M3']
      }),
    ).toEqual([])
  })
})

describe('mixing against the rule', () => {
  it.each([
    ['more than one grade apart', 'S', 'U', 'neighbours'],
    ['the thicker wall in the wrong half', 'U', 'T', 'thicker-lower'],
  ])('%s', (_, upper, lower, rule) => {
    expect(mains((fit) => Object.assign(nth(fit.chart, 4), { upper, lower }))).toEqual([
      'fault chart-mixes-against-rule fits[0].chart[4]: fit=Main bearings, housing=2, journal=G, split=upper-lower, ' +
        `upper=${upper}, lower=${lower}, rule=${rule}`,
    ])
  })

  it('at all, where none is allowed', () => {
    const lines = mains((fit) => {
      fit.mixing = { neighbours: false, thicker: 'lower' }
      Object.assign(nth(fit.chart, 4), { upper: 'S', lower: 'T' })
    })
    expect(lines).toEqual([expect.stringContaining('chart-mixes-against-rule ')])
  })
})

describe('the clearance of a chart cell, from the bands', () => {
  it('that may leave the limits is doubted, with the numbers', () => {
    // 2 and G with V, V: (55.006…55.012) − (51.988…51.994) − 2·(1.496…1.499) = 14…32 µm.
    expect(mains((fit) => Object.assign(nth(fit.chart, 4), { upper: 'V', lower: 'V' }))).toEqual([
      'doubt chart-leaves-limits fits[0].chart[4]: fit=Main bearings, from=14, upTo=32 µm, from=20, upTo=50 µm, housing=2, journal=G, split=upper-lower, upper=V, lower=V',
    ])
  })

  it('that is nowhere inside is a fault', () => {
    // 1 and F with V, V: (55.000…55.006) − (51.994…52.000) − 2·(1.496…1.499) = 2…20 µm; limits from 21.
    const lines = mains((fit) => {
      fit.clearance.least = '21 µm'
      Object.assign(nth(fit.chart, 0), { upper: 'V', lower: 'V' })
    })
    expect(lines).toEqual([
      'fault chart-misses-limits fits[0].chart[0]: fit=Main bearings, from=2, upTo=20 µm, from=21, upTo=50 µm, housing=1, journal=F, split=upper-lower, upper=V, lower=V',
    ])
  })

  it('may touch the limits', () => {
    // The demo's own cells: 26 to 44 µm.
    expect(mains((fit) => Object.assign(fit.clearance, { least: '26 µm', most: '44 µm' }))).toEqual([])
    expect(mains((fit) => Object.assign(fit.clearance, { least: '26.001 µm' }))).toHaveLength(9)
  })
})

describe('the clearance of the best pair, where bands decide', () => {
  it('that may leave the limits is doubted', () => {
    // A and 7 with P, P: (52.000…52.007) − (47.993…48.000) − 2·(1.979…1.983) = 34…56 µm.
    expect(
      withoutChart((fit) => Object.assign(fit.clearance, { least: '36 µm', target: '45 µm' })),
    ).toContain(
      'doubt bands-leave-limits fits[1]: fit=Big ends, from=34, upTo=56 µm, from=36, upTo=56 µm, housing=A, journal=7, split=upper-lower, upper=P, lower=P',
    )
  })

  it('that is nowhere inside is a fault', () => {
    expect(withoutChart((fit) => (fit.clearance = { least: '70 µm', most: '95 µm' }))).toContain(
      'fault bands-miss-limits fits[1]: fit=Big ends, from=34, upTo=56 µm, from=70, upTo=95 µm, housing=A, journal=7, split=upper-lower, upper=P, lower=P',
    )
  })
})
