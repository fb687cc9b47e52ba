import { nth, type Draft } from '../engine/demo.ts'
import type { OneWrong } from './one-wrong.ts'

type DraftFit = Draft['fits'][number]

/** The main bearings of Skerry 3, by chart. */
const mains = (change: (fit: DraftFit) => unknown): OneWrong => [
  'skerry-3',
  (spec) => change(nth(spec.fits, 0)),
]
/** The same without the walls of their grades: no clearance follows from a band. */
const unwalled = (change: (fit: DraftFit) => unknown): OneWrong =>
  mains((fit) => {
    for (const grade of fit.grades) delete grade.wall
    change(fit)
  })
/** The big ends of Tarn 4, by bands. */
const banded = (change: (fit: DraftFit) => unknown): OneWrong => [
  'tarn-4',
  (spec) => change(nth(spec.fits, 1)),
]
const washers = (change: (endFloat: NonNullable<Draft['endFloat']>) => unknown): OneWrong => [
  'skerry-3',
  (spec) => change(spec.endFloat!),
]
/** An undersize of 0.25 mm with one printed wall for grade R, thicker than the standard one by so much. */
const walled = (by: number, grade = 'R'): OneWrong =>
  mains((fit) => {
    const { over, upTo } = nth(fit.grades, 0).wall as { over: string; upTo: string }
    const thicker = (size: string) => `${(Number.parseFloat(size) + by).toFixed(4)} mm`
    fit.undersizes = [
      {
        name: '0.25 under',
        undersize: '0.25 mm',
        walls: [{ grade, wall: { over: thicker(over), upTo: thicker(upTo) } }],
      },
    ]
  })
const measuring = (change: object): OneWrong =>
  mains((fit) => (fit.measuring = { planes: 2, directions: 2, taper: '5 µm', ...change }))

/** One thing wrong with bearings or washers. */
export const oneWrongInBearings: Readonly<Record<string, OneWrong>> = {
  'band-reversed': unwalled(
    (fit) => (nth(fit.housing.marks, 0).band = { over: '55.006 mm', upTo: '55.006 mm' }),
  ),
  'bands-overlap': unwalled(
    (fit) => (nth(fit.housing.marks, 1).band = { over: '55.004 mm', upTo: '55.012 mm' }),
  ),
  'bands-gap': unwalled((fit) => (nth(fit.housing.marks, 1).band = { over: '55.007 mm', upTo: '55.012 mm' })),
  'band-wide': unwalled((fit) => (nth(fit.housing.marks, 0).band = { over: '54.900 mm', upTo: '55.006 mm' })),
  'band-missing': mains((fit) => delete nth(fit.housing.marks, 2).band),
  'bands-not-as-drawn': mains((fit) => (fit.housing.drawn = '55 H5')),
  'bore-far-from-nominal': ['skerry-3', (spec) => (nth(spec.case.saddles, 0).diameter = '54 mm')],
  'nothing-to-choose-by': mains((fit) => {
    for (const { marks } of [fit.housing, fit.journal]) for (const mark of marks) delete mark.band
    for (const cell of fit.chart ?? []) cell.positions = ['M1', 'M2', 'M3']
  }),
  'grades-not-ascending': banded((fit) => fit.grades.reverse()),
  'grades-overlap': banded((fit) => (nth(fit.grades, 1).wall = { over: '1.982 mm', upTo: '1.986 mm' })),
  'grades-look-alike': mains((fit) =>
    Object.assign(nth(fit.grades, 3), { colour: '#CC79A7', pattern: 'slant' }),
  ),
  'undersize-large': mains((fit) => fit.undersizes!.push({ name: '3 under', undersize: '3 mm' })),
  'undersize-twice': mains((fit) => fit.undersizes!.push({ name: 'again', undersize: '0.25 mm' })),
  'undersize-wall-off': walled(0.2),
  'undersize-wall-full': walled(0.25),
  'undersize-grade-unknown': walled(0.125, 'Z'),
  'undersize-grade-twice': mains((fit) => {
    const { over, upTo } = nth(fit.grades, 0).wall as { over: string; upTo: string }
    const thicker = (size: string) => `${(Number.parseFloat(size) + 0.125).toFixed(4)} mm`
    const wall = { grade: nth(fit.grades, 0).grade, wall: { over: thicker(over), upTo: thicker(upTo) } }
    fit.undersizes = [{ name: '0.25 under', undersize: '0.25 mm', walls: [wall, wall] }]
  }),
  'worn-wall-above-new': mains((fit) => (fit.wornWall = '1.6 mm')),
  'split-against-family': mains((fit) => (fit.split = 'left-right')),
  'taper-length-incomplete': measuring({ taperPer: '25 mm' }),
  'planes-beyond-bearing': measuring({ taperPer: '25 mm', planesApart: '90 mm' }),
  'position-in-two-fits': [
    'skerry-3',
    (spec) => {
      spec.fits.push({ ...nth(spec.fits, 0), id: 'rear', name: 'Rear', positions: ['M4'] })
      // Each of the steps of the main bearings, once more for this fit.
      const ofMains = spec.steps.filter((step) => 'fit' in step && step.fit === 'mains')
      const ids = new Set(ofMains.map(({ id }) => id))
      for (const step of ofMains)
        spec.steps.push({
          ...step,
          ...{ id: `rear-${step.id}`, name: `Rear ${step.id}`, fit: 'rear' },
          after: (step.after ?? []).map((id) => (ids.has(id) ? `rear-${id}` : id)),
        })
      for (const step of spec.steps)
        if (!step.id.startsWith('rear-') && step.after?.includes('fit-mains'))
          step.after.push('rear-fit-mains')
    },
  ],
  'chart-mark-unknown': mains((fit) =>
    fit.chart!.push({ housing: '9', journal: 'F', upper: 'R', lower: 'R' }),
  ),
  'chart-grade-unknown': mains((fit) => (nth(fit.chart, 4).lower = 'Z')),
  'chart-cell-absent': mains((fit) => fit.chart!.splice(5, 1)),
  'chart-cell-twice': mains((fit) => fit.chart!.push({ housing: '2', journal: 'G', upper: 'T', lower: 'T' })),
  'chart-mixes-against-rule': mains((fit) => Object.assign(nth(fit.chart, 4), { upper: 'U', lower: 'T' })),
  'chart-leaves-limits': mains((fit) => Object.assign(nth(fit.chart, 4), { upper: 'V', lower: 'V' })),
  'chart-misses-limits': mains((fit) => {
    fit.clearance.least = '21 µm'
    Object.assign(nth(fit.chart, 0), { upper: 'V', lower: 'V' })
  }),
  'bands-leave-limits': banded((fit) => Object.assign(fit.clearance, { least: '36 µm', target: '45 µm' })),
  'bands-miss-limits': banded((fit) => (fit.clearance = { least: '200 µm', most: '220 µm' })),
  'service-limit-below-most': mains((fit) => (fit.clearance.serviceLimit = '40 µm')),
  'target-outside-limits': banded((fit) => (fit.clearance.target = '70 µm')),

  'washers-overlap': washers(({ washers }) => (nth(washers, 1).floatFrom = '0.18 mm')),
  'washers-half-tabled': washers(({ washers }) => delete nth(washers, 1).floatTo),
  'washers-mixed-tabled': washers((endFloat) => (endFloat.mixed = true)),
  'washer-misses-limits': washers(({ washers }) => (nth(washers, 1).thickness = '2.57 mm')),
  'washer-thickness-twice': washers((endFloat) => (endFloat.washers = byThickness('2.5 mm', '2.5 mm'))),
  'washer-steps-wide': washers((endFloat) => (endFloat.washers = byThickness('2.5 mm', '2.6 mm'))),
}

function byThickness(...thicknesses: readonly string[]) {
  return thicknesses.map((thickness, index) => ({ name: `washer ${index + 1}`, thickness }))
}
