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
    ).toContain(
      'fault band-reversed fits[0].housing.marks[1].band: Main bearings, Case, mark 2: the band runs from 55.0120 mm to ' +
        '55.0060 mm, the wrong way or over nothing. Correct one of the two.',
    )
  })

  it('that overlap are a fault', () => {
    expect(
      mains((fit) => (nth(fit.journal.marks, 1).band = { over: '51.990 mm', upTo: '51.996 mm' })),
    ).toContain(
      'fault bands-overlap fits[0].journal.marks[0]: Main bearings, Crank: the bands of mark G and mark F overlap, so ' +
        'that a size has two marks. Correct one of them.',
    )
  })

  it('that leave a gap are doubted', () => {
    expect(
      mains((fit) => (nth(fit.journal.marks, 1).band = { over: '51.988 mm', upTo: '51.992 mm' })),
    ).toContain(
      'doubt bands-gap fits[0].journal.marks[0]: Main bearings, Crank: between mark G and mark F, sizes over 51.9920 mm ' +
        'up to 51.9940 mm have no mark. Check whether a band is misprinted.',
    )
  })

  it('that are missing for one mark and not for the others are doubted', () => {
    expect(mains((fit) => delete nth(fit.housing.marks, 2).band)).toEqual([
      'doubt band-missing fits[0].housing.marks[2]: Main bearings, Case, mark 3 has no band while others have. Add it, so ' +
        'that its clearance can be calculated.',
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
      'fault nothing-to-choose-by fits[1]: Big ends: there is neither a chart nor a band for every mark and grade, so no ' +
        'shell can be chosen. Give one of them.',
    )
  })

  it('as wide as no bearing has are doubted: a slip of a digit', () => {
    expect(
      withoutChart((fit) => (nth(fit.journal.marks, 1).band = { over: '47.693 mm', upTo: '47.993 mm' })),
    ).toContain(
      'doubt band-wide fits[1].journal.marks[1].band: Big ends, Crank pins, mark 8: a band 300.0 µm wide is unusual for ' +
        'a bearing. Check both ends of it and their unit.',
    )
  })

  it('far from the bore that is drawn are doubted', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.case.saddles, 0).diameter = '54 mm'))).toContain(
      'doubt bore-far-from-nominal fits[0].housing.marks[0].band: Main bearings, Case, mark 1: 55.0000 mm is far from ' +
        'the 54.0000 mm that M1 is drawn with. Check both, and their unit.',
    )
  })
})

describe('grades', () => {
  it('that are not listed from thin to thick are a fault: neighbours would not be neighbours', () => {
    expect(withoutChart((fit) => fit.grades.reverse())).toEqual([
      expect.stringContaining(
        'fault grades-not-ascending fits[1].grades[1]: Big ends: grade Q is listed after W',
      ),
      expect.stringContaining(
        'fault grades-not-ascending fits[1].grades[2]: Big ends: grade P is listed after Q',
      ),
    ])
  })

  it('whose walls overlap are doubted', () => {
    expect(
      withoutChart((fit) => (nth(fit.grades, 1).wall = { over: '1.982 mm', upTo: '1.986 mm' })),
    ).toContain(
      'doubt grades-overlap fits[1].grades[1]: Big ends: the walls of grades P and Q overlap. Check both bands.',
    )
  })

  it('that look alike are a fault', () => {
    expect(
      mains((fit) => Object.assign(nth(fit.grades, 3), { colour: '#CC79A7', pattern: 'slant' })),
    ).toEqual([
      'fault grades-look-alike fits[0].grades[0]: Main bearings: grades R and U have the same colour and pattern. Give ' +
        'one of them another.',
    ])
  })

  it('may share a colour when the pattern differs', () => {
    expect(mains((fit) => (nth(fit.grades, 3).colour = '#CC79A7'))).toEqual([])
  })
})

describe('undersizes', () => {
  it('that nobody grinds are doubted: 0.25 in for 0.25 mm', () => {
    expect(mains((fit) => (fit.undersizes = [{ name: '0.25 under', undersize: '0.25 in' }]))).toEqual([
      'doubt undersize-large fits[0].undersizes[0].undersize: Main bearings: nobody grinds 6.35 mm off a journal (“0.25 ' +
        'under”). Check the value and its unit.',
    ])
  })

  it('that are there twice are a fault', () => {
    expect(mains((fit) => fit.undersizes?.push({ name: 'second', undersize: '0.25 mm' }))).toEqual([
      'fault undersize-twice fits[0].undersizes[2]: Main bearings: the undersize 0.25 mm is there twice, or has two ' +
        'names (“second”). Keep one.',
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
    'fault position-in-two-fits fits[2].positions: M2 is in Main bearings and in Mains again: it would get its shells ' +
      'twice. Take it out of one.',
  )
})

describe('a chart', () => {
  it('with a mark that is not stamped is a fault', () => {
    expect(mains((fit) => (nth(fit.chart, 0).housing = '7'))).toContain(
      'fault chart-mark-unknown fits[0].chart[0].housing: Main bearings: the chart has a cell for mark 7 of Case, which ' +
        'is not one of 1, 2, 3. Correct the cell, or add the mark.',
    )
  })

  it('with a grade that is not made is a fault', () => {
    expect(mains((fit) => (nth(fit.chart, 4).lower = 'Z'))).toEqual([
      'fault chart-grade-unknown fits[0].chart[4].lower: Main bearings, marks 2 and G: Z is not a grade of this fit. Its ' +
        'grades are R, S, T, U, V.',
    ])
  })

  it('with a cell missing is doubted', () => {
    expect(mains((fit) => fit.chart?.splice(5, 1))).toEqual([
      'doubt chart-cell-absent fits[0].chart: Main bearings, marks 2 and H: the chart has no shells for M1, M2, M3, M4. ' +
        'Add the cell, or say why it is empty.',
    ])
  })

  it('with two cells for one bearing is a fault', () => {
    expect(mains((fit) => fit.chart?.push({ housing: '2', journal: 'G', upper: 'T', lower: 'T' }))).toEqual([
      'fault chart-cell-twice fits[0].chart[9]: Main bearings, marks 2 and G: the chart has two cells for one bearing. ' +
        'Keep one.',
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
    ['more than one grade apart', 'S', 'U', 'only neighbouring grades may be mixed'],
    ['the thicker wall in the wrong half', 'U', 'T', 'the lower half takes the thicker wall'],
  ])('%s', (_, upper, lower, rule) => {
    expect(mains((fit) => Object.assign(nth(fit.chart, 4), { upper, lower }))).toEqual([
      `fault chart-mixes-against-rule fits[0].chart[4]: Main bearings, marks 2 and G: upper ${upper} with lower ${lower}, ` +
        `but ${rule}. Correct the cell, or the rule.`,
    ])
  })

  it('at all, where none is allowed', () => {
    const lines = mains((fit) => {
      fit.mixing = { neighbours: false, thicker: 'lower' }
      Object.assign(nth(fit.chart, 4), { upper: 'S', lower: 'T' })
    })
    expect(lines).toEqual([expect.stringContaining('but the halves of one bearing must be of one grade')])
  })
})

describe('the clearance of a chart cell, from the bands', () => {
  it('that may leave the limits is doubted, with the numbers', () => {
    // 2 and G with V, V: (55.006…55.012) − (51.988…51.994) − 2·(1.496…1.499) = 14…32 µm.
    expect(mains((fit) => Object.assign(nth(fit.chart, 4), { upper: 'V', lower: 'V' }))).toEqual([
      'doubt chart-leaves-limits fits[0].chart[4]: Main bearings, marks 2 and G: upper V with lower V can give a clearance ' +
        'of 14 to 32 µm, by their bands; allowed is 20 to 50 µm. Check the cell and the bands.',
    ])
  })

  it('that is nowhere inside is a fault', () => {
    // 1 and F with V, V: (55.000…55.006) − (51.994…52.000) − 2·(1.496…1.499) = 2…20 µm; limits from 21.
    const lines = mains((fit) => {
      fit.clearance.least = '21 µm'
      Object.assign(nth(fit.chart, 0), { upper: 'V', lower: 'V' })
    })
    expect(lines).toEqual([
      'fault chart-misses-limits fits[0].chart[0]: Main bearings, marks 1 and F: upper V with lower V give a clearance of ' +
        '2 to 20 µm, by their bands, nowhere inside 21 to 50 µm. Correct the cell or the bands.',
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
      'doubt bands-leave-limits fits[1]: Big ends, marks A and 7: the best pair, upper P with lower P, can give 34 to 56 µm; ' +
        'allowed is 36 to 56 µm. Check the bands and the limits.',
    )
  })

  it('that is nowhere inside is a fault', () => {
    expect(withoutChart((fit) => (fit.clearance = { least: '70 µm', most: '95 µm' }))).toContain(
      'fault bands-miss-limits fits[1]: Big ends, marks A and 7: no pair of grades comes inside 70 to 95 µm; the nearest, ' +
        'upper P with lower P, gives 34 to 56 µm. Correct the bands or the limits.',
    )
  })
})
