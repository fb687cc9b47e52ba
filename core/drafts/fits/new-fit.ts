import type { SpecDocument } from '../../engine/index.ts'
import { freeId, inNanometres } from '../placing/index.ts'
import { bearingsOf } from '../placing/bearings.ts'
import { nextLook } from './looks.ts'

type Fit = SpecDocument['fits'][number]
type Text = Fit['name']

/** A fit as it is typed from the manual: marks and grades in one line each, `1 2 3`. */
export interface TypedFit {
  readonly kind: Fit['kind']
  readonly name: string
  readonly housing: { readonly name: string; readonly marks: string }
  readonly journal: { readonly name: string; readonly marks: string }
  /** From the thinnest wall to the thickest. */
  readonly grades: string
  readonly least: string
  readonly most: string
  readonly mixing: Fit['mixing']
}

/** The names of the four steps that a fit needs. */
export interface FitStepNames {
  readonly housing: Text
  readonly journal: Text
  readonly choose: Text
  readonly fitting: Text
}

/** Marks or grades typed in one line, each once. */
export function inOneLine(typed: string): readonly string[] {
  return [...new Set(typed.split(/[\s,;]+/).filter((each) => each !== ''))]
}

/**
 * A fit of all bearings of its kind that are in none yet, in the order in which they lie along the crank, with the four steps that
 * read its marks, choose and lay in its shells. Sizes and the chart are typed in afterwards; the audit asks for them.
 */
export function withFit(
  document: SpecDocument,
  typed: TypedFit,
  names: FitStepNames,
): { readonly document: SpecDocument; readonly fit: string } {
  const { kind, name, least, most, mixing } = typed
  const stems = { main: 'mains', 'big-end': 'big-ends', balance: 'balance' } as const
  const id = freeId(
    stems[kind],
    document.fits.map((fit) => fit.id),
  )
  const marked = ({ name: part, marks }: TypedFit['housing']) => ({
    name: part,
    marks: inOneLine(marks).map((mark) => ({ mark })),
  })
  const grades = inOneLine(typed.grades.toUpperCase()).reduce<Fit['grades']>(
    (all, grade) => [...all, { grade, ...nextLook(all) }],
    [],
  )
  const isUpright = document.case.family === 'split-vertical' && kind !== 'big-end'
  const fit: Fit = {
    ...{ id, name, kind },
    ...(isUpright && { split: 'left-right' as const }),
    positions: [...freePositions(document, kind)],
    housing: marked(typed.housing),
    journal: marked(typed.journal),
    grades,
    mixing,
    clearance: { least, most },
  }
  const added = { ...document, fits: [...document.fits, fit] }
  return { fit: id, document: withSteps(added, id, names) }
}

/** The bearings of a kind that are in no fit, along the crank from the nose on. */
export function freePositions(document: SpecDocument, kind: Fit['kind']): readonly string[] {
  const taken = new Set(document.fits.flatMap(({ positions }) => positions))
  const of = { main: 'saddle', 'big-end': 'rod', balance: 'balance' } as const
  return bearingsOf(document, of[kind])
    .filter(({ id }) => !taken.has(id))
    .toSorted((one, other) => inNanometres(one.at) - inNanometres(other.at))
    .map(({ id }) => id)
}

function withSteps(document: SpecDocument, fit: string, names: FitStepNames): SpecDocument {
  const taken = document.steps.map(({ id }) => id)
  const step = (what: string) => freeId(`${fit}-${what}`, taken)
  const [housing, journal, choose, fitting] = [
    step('housing'),
    step('journal'),
    step('shells'),
    step('lay-in'),
  ]
  return {
    ...document,
    steps: [
      ...document.steps,
      { id: housing, kind: 'note-marks', name: names.housing, fit, part: 'housing' },
      { id: journal, kind: 'note-marks', name: names.journal, fit, part: 'journal' },
      { id: choose, kind: 'choose-shells', name: names.choose, fit, after: [housing, journal] },
      { id: fitting, kind: 'fit-shells', name: names.fitting, fit, after: [choose] },
    ],
  }
}
