import { describe, expect, it } from 'vitest'
import { audit } from '../../../core/audit/index.ts'
import {
  gradeThinner,
  groupsInPass,
  valueOfGroup,
  withFit,
  withGrades,
  withMarks,
  withRingSet,
  withValueOfGroup,
  withoutFit,
  withoutGrade,
  withoutMark,
  type PassInDocument,
  type SpecDocument,
  type TypedFit,
} from '../../../core/drafts/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { documentOf } from './document-of-demo.ts'

const skerry = documentOf('skerry-3')
const names = { housing: 'Case marks', journal: 'Crank marks', choose: 'Choose', fitting: 'Fit' }
const typed = {
  kind: 'main',
  ...{ name: 'Mains', grades: 'a, b c', least: '20 µm', most: '50 µm' },
  housing: { name: 'Case', marks: '1 2 2 3' },
  journal: { name: 'Crank', marks: 'U; W' },
  mixing: { neighbours: true, thicker: 'lower' },
} as const satisfies TypedFit

function made(outcome: Outcome<SpecDocument>): SpecDocument {
  if (!outcome.ok) throw new Error(outcome.problem.code)
  return outcome.value
}

/** The demo without its fits and what names them. */
const without = skerry.fits.reduce((document, { id }) => made(withoutFit(document, id)), {
  ...skerry,
  cautions: [],
  parts: [],
  steps: skerry.steps.map((step) => ({ ...step, after: [] })),
} as SpecDocument)

function findings(document: SpecDocument) {
  const read = readSpec(JSON.stringify(document))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return audit(read.spec).map(({ problem }) => problem.code)
}

describe('new bearings with marks', () => {
  const { document, fit } = withFit(without, typed, names)
  const added = document.fits.at(-1)!

  it('are those of their kind, in their order, each mark once and each grade with a look of its own', () => {
    expect(added.positions).toEqual(skerry.case.saddles.map(({ id }) => id))
    expect(added.housing.marks.map(({ mark }) => mark)).toEqual(['1', '2', '3'])
    expect(added.journal.marks.map(({ mark }) => mark)).toEqual(['U', 'W'])
    const looks = added.grades.map(({ grade, colour, pattern }) => `${grade} ${colour} ${pattern}`)
    expect(new Set(looks).size).toBe(3)
    expect(looks.map((look) => look[0])).toEqual(['A', 'B', 'C'])
  })

  it('have their four steps, and no size is made up: the audit asks for them', () => {
    const found = findings(document)
    expect(found).not.toContain('fit-without-step')
    expect(found).toContain('nothing-to-choose-by')
  })

  it('are taken out with their steps', () => {
    expect(made(withoutFit(document, fit))).toEqual(without)
  })

  it('are taken out where another step waits for theirs: that waits for what these waited for', () => {
    const [first] = without.steps
    const steps = document.steps.map((step) =>
      'fit' in step && step.fit === fit && step.kind === 'note-marks'
        ? { ...step, after: [first!.id] }
        : step,
    )
    const fitting = steps.at(-1)!
    const later = { ...first!, id: 'later', after: [fitting.id] }
    const left = made(withoutFit({ ...document, steps: [...steps, later] }, fit))
    expect(left.steps.at(-1)).toMatchObject({ id: 'later', after: [first!.id] })
    expect(readSpec(JSON.stringify(left)).ok).toBe(true)
  })

  it('are not taken out where a caution stands beside a step of theirs alone', () => {
    const steps = [document.steps.at(-1)!.id]
    const warned = { ...document, cautions: [{ signal: 'CAUTION' as const, text: 'Edges cut.', steps }] }
    expect(withoutFit(warned, fit)).toMatchObject({ ok: false, problem: { code: 'draft-step-has-caution' } })
  })
})

describe('marks and grades', () => {
  const [first] = skerry.fits
  const { id } = first!

  it('are added behind those there are, and none twice', () => {
    const { marks } = withMarks(skerry, id, 'housing', `${first!.housing.marks[0]!.mark} Z`).fits[0]!.housing
    expect(marks.map(({ mark }) => mark)).toEqual([...first!.housing.marks.map(({ mark }) => mark), 'Z'])
    expect(withGrades(skerry, id, 'zz').fits[0]!.grades.at(-1)).toMatchObject({ grade: 'ZZ' })
  })

  it('go with their cells of the chart', () => {
    const mark = first!.housing.marks[0]!.mark
    const cells = withoutMark(skerry, id, 'housing', mark).fits[0]!.chart ?? []
    expect(cells.length).toBeLessThan(first!.chart!.length)
    expect(cells.some(({ housing }) => housing === mark)).toBe(false)
    const { grade } = first!.grades[0]!
    const left = withoutGrade(skerry, id, grade).fits[0]!
    expect(JSON.stringify(left.chart)).not.toContain(`"upper":"${grade}"`)
    expect(left.grades).toHaveLength(first!.grades.length - 1)
  })

  it('move towards the thinner walls, the first one not at all', () => {
    const order = (document: SpecDocument) => document.fits[0]!.grades.map(({ grade }) => grade)
    const [a, b, ...rest] = order(skerry)
    expect(order(gradeThinner(skerry, id, b!))).toEqual([b, a, ...rest])
    expect(gradeThinner(skerry, id, a!).fits[0]!.grades).toEqual(first!.grades)
  })
})

describe('a value for the fasteners of one group', () => {
  const pass = { kind: 'torque', order: 'o', target: '110 lbf·ft' } as const satisfies PassInDocument
  const group = { group: 'short', fasteners: ['s1', 's2'] }

  it('stands beside that of the pass, in its unit, and goes when it is emptied', () => {
    const both = withValueOfGroup(pass, group, '100')
    expect(both).toEqual({ ...pass, others: [{ fasteners: ['s1', 's2'], target: '100 lbf·ft' }] })
    expect(valueOfGroup(both as typeof pass & { others: [] }, group)).toBe('100 lbf·ft')
    expect(withValueOfGroup(both as typeof pass, group, ' ')).toEqual(pass)
  })

  it('is shown as the range that it was typed as', () => {
    const both = withValueOfGroup(pass, group, '60 to 65 lbf·ft') as typeof pass & { others: [] }
    expect(both.others).toEqual([{ fasteners: ['s1', 's2'], least: '60 lbf·ft', most: '65 lbf·ft' }])
    const shown = valueOfGroup(both, group)
    expect(shown).toBe('60 lbf·ft – 65 lbf·ft')
    expect(withValueOfGroup(pass, group, shown)).toEqual(both)
  })

  it('is asked for group by group, as the order comes to them', () => {
    const procedure = skerry.procedures[0]!
    const [found] = [
      groupsInPass(
        skerry,
        procedure,
        procedure.passes.find((each) => 'order' in each)!,
      ),
    ]
    const groups = new Set(
      procedure.orders[0]!.sequence.map((one) => skerry.fasteners.find(({ id }) => id === one)!.group),
    )
    expect(found.map((each) => each.group)).toEqual([...groups])
    expect(found.flatMap(({ fasteners }) => fasteners).toSorted()).toEqual(
      [...procedure.orders[0]!.sequence].toSorted(),
    )
  })
})

describe('new rings', () => {
  it('are of all pistons, one a cylinder', () => {
    const ring = { name: 'Top ring', kind: 'compression', groove: 1, gapAt: '45 °' } as const
    const document = withRingSet(
      { ...skerry, ringSets: [] },
      { name: 'Rings', where: 'With feelers.', apart: '120 °', ring },
      { piston: (cylinder) => `Piston ${cylinder}`, bore: (cylinder) => `Bore ${cylinder}` },
    )
    const read = readSpec(
      JSON.stringify({ ...document, steps: document.steps.filter((step) => !('rings' in step)) }),
    )
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    const [set] = read.spec.ringSets
    expect(set?.pistons.map(({ name, bore }) => `${name.text} in ${bore.text}`)).toEqual([
      ...['Piston 1 in Bore 1', 'Piston 2 in Bore 2', 'Piston 3 in Bore 3'],
    ])
    expect(set?.rings.map(({ id }) => id)).toEqual(['ring-1'])
  })
})
