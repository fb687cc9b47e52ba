import { describe, expect, it } from 'vitest'
import { audit } from '../../../core/audit/index.ts'
import { demoDraft, named, specOf, type Draft } from '../engine/demo.ts'

type DraftPass = Draft['procedures'][number]['passes'][number]

/** The codes of all that is said of Skerry 3 after one change. */
function codesAfter(change: (draft: Draft) => void): readonly string[] {
  const draft = structuredClone(demoDraft('skerry-3'))
  change(draft)
  return audit(specOf(draft)).map(({ problem }) => problem.code)
}

/** The main bearings without the walls of their grades, so that no clearance follows from a band. */
function mainsOf(draft: Draft) {
  const mains = named(draft.fits, 'mains')
  for (const grade of mains.grades) delete grade.wall
  return mains
}

const withRods = (passes: (old: readonly DraftPass[]) => readonly DraftPass[]) => (draft: Draft) => {
  const rods = named(draft.procedures, 'rods')
  rods.passes = [...passes(rods.passes)]
}

const order = 'by-rod'
const seat: DraftPass = { kind: 'seat', order }
const torque: DraftPass = { kind: 'torque', order, target: '15 N·m', least: '14 N·m', most: '16 N·m' }
const length: DraftPass = { kind: 'length', order }
// A bolt M8×1 of 40 mm grip yields at about 40 kN, some 50 N·m, and is then 0.25 mm longer.
const stretch: DraftPass = { kind: 'stretch', order, least: '0.08 mm', most: '0.10 mm' }

const mistakes: readonly (readonly [code: string, what: string, change: (draft: Draft) => void])[] = [
  [
    'band-wide',
    'the lowest band of the case begins a tenth of a millimetre too low',
    (draft) => (mainsOf(draft).housing.marks[0]!.band = { over: '54.900 mm', upTo: '55.006 mm' }),
  ],
  [
    'bands-overlap',
    'the second band begins before the first ends',
    (draft) => (mainsOf(draft).housing.marks[1]!.band = { over: '55.004 mm', upTo: '55.012 mm' }),
  ],
  [
    'chart-mark-unknown',
    'the chart has a cell for a mark that the case does not have',
    (draft) => named(draft.fits, 'mains').chart!.push({ housing: '9', journal: 'F', upper: 'R', lower: 'R' }),
  ],
  [
    'outline-crosses-itself',
    'four corners at the edge of the case joint are not in order',
    (draft) =>
      named(draft.case.faces, 'joint').outline!.splice(
        2,
        0,
        ['180 mm', '-100 mm'],
        ['190 mm', '-110 mm'],
        ['180 mm', '-110 mm'],
        ['190 mm', '-100 mm'],
      ),
  ],
  [
    'order-of-other-face',
    'the flange’s order has a bolt of the sump',
    (draft) => {
      const bolt = named(draft.fasteners, 'flange-9')
      draft.fasteners.push({ ...bolt, id: 'stray', number: '99', face: 'sump', at: ['200 mm', '0 mm'] })
      named(draft.procedures, 'flange').orders[0]!.sequence.push('stray')
    },
  ],
  [
    'angle-beyond-a-turn',
    'an angle of 365°',
    (draft) => {
      // Of 1 mm in 600 a bolt takes no harm: it is the turn that is doubted here, not what it does.
      named(draft.fastenerGroups, 'rod-bolts').grip = '600 mm'
      const angle = { kind: 'angle', order, target: '365 °', least: '360 °', most: '370 °' } as const
      withRods(() => [seat, torque, angle])(draft)
    },
  ],
  [
    'recheck-outside-order',
    'a bolt of the case is rechecked with the rods',
    withRods((old) => [...old, { ...torque, kind: 'recheck', only: ['case-1'] }]),
  ],
  ['stretch-without-length', 'a stretch without a length', withRods((old) => [...old, stretch])],
  ['length-after-pull', 'a length after a torque', withRods((old) => [...old, length, stretch])],
  [
    'stretch-large',
    'a stretch of 3 mm in 40',
    withRods((old) => [length, ...old, { ...stretch, most: '3 mm' }]),
  ],
  [
    'stretch-not-by-torque',
    'a stretch that no such torque gives',
    withRods(() => [
      length,
      seat,
      {
        ...{ kind: 'tighten-to-stretch', order, least: '0.08 mm', most: '0.10 mm' },
        torque: { least: '3 N·m', most: '4 N·m' },
      },
    ]),
  ],
  [
    'torque-clamps-nothing',
    'a tenth of the torque',
    withRods(() => [seat, { kind: 'torque', order, target: '1.6 N·m' }]),
  ],
  [
    'position-in-two-fits',
    'the last saddle is of two fits',
    (draft) => {
      draft.fits.push({ ...named(draft.fits, 'mains'), id: 'rear', name: 'Rear', positions: ['M4'] })
      // Each of the steps of the main bearings, once more for this fit.
      const ofMains = draft.steps.filter((step) => 'fit' in step && step.fit === 'mains')
      const ids = new Set(ofMains.map(({ id }) => id))
      for (const step of ofMains)
        draft.steps.push({
          ...step,
          ...{ id: `rear-${step.id}`, name: `Rear ${step.name}`, fit: 'rear' },
          after: (step.after ?? []).map((id) => (ids.has(id) ? `rear-${id}` : id)),
        })
      for (const step of draft.steps)
        if (!step.id.startsWith('rear-') && step.after?.includes('fit-mains'))
          step.after.push('rear-fit-mains')
    },
  ],
]

describe('a spec with one thing wrong', () => {
  it('has nothing wrong without it', () => {
    expect(codesAfter(() => undefined)).toEqual([])
  })

  it.each(mistakes)('%s: %s', (code, _, change) => {
    expect(codesAfter(change)).toEqual([code])
  })
})
