import type { SpecDocument } from '../../engine/index.ts'
import { inOneLine } from './new-fit.ts'
import { nextLook } from './looks.ts'

type Fit = SpecDocument['fits'][number]

/** Where marks are read. */
export type MarkedSide = 'housing' | 'journal'

/** Marks more, typed in one line; what is there already is not added twice. */
export function withMarks(
  document: SpecDocument,
  fit: string,
  side: MarkedSide,
  typed: string,
): SpecDocument {
  return changed(document, fit, (each) => {
    const there = each[side].marks.map(({ mark }) => mark)
    const fresh = inOneLine(typed).filter((mark) => !there.includes(mark))
    return {
      ...each,
      [side]: { ...each[side], marks: [...each[side].marks, ...fresh.map((mark) => ({ mark }))] },
    }
  })
}

/** Without a mark and its cells of the chart. */
export function withoutMark(
  document: SpecDocument,
  fit: string,
  side: MarkedSide,
  mark: string,
): SpecDocument {
  return changed(document, fit, (each) => ({
    ...withoutCells(each, (cell) => cell[side] === mark),
    [side]: { ...each[side], marks: each[side].marks.filter((one) => one.mark !== mark) },
  }))
}

/** Grades more, behind the thickest there is, each with a look of its own. */
export function withGrades(document: SpecDocument, fit: string, typed: string): SpecDocument {
  return changed(document, fit, (each) => ({
    ...each,
    grades: inOneLine(typed.toUpperCase()).reduce<Fit['grades']>(
      (all, grade) => (all.some((one) => one.grade === grade) ? all : [...all, { grade, ...nextLook(all) }]),
      each.grades,
    ),
  }))
}

/** Without a grade, the cells of the chart that name it, and its walls of undersizes. */
export function withoutGrade(document: SpecDocument, fit: string, grade: string): SpecDocument {
  return changed(document, fit, (each) => ({
    ...withoutCells(each, ({ upper, lower }) => upper === grade || lower === grade),
    grades: each.grades.filter((one) => one.grade !== grade),
    ...(each.undersizes && {
      undersizes: each.undersizes.map((size) => {
        const { walls, ...rest } = size
        const left = walls?.filter((wall) => wall.grade !== grade)
        return left === undefined || left.length === 0 ? rest : { ...rest, walls: left }
      }),
    }),
  }))
}

/** A grade one place towards the thinner walls. */
export function gradeThinner(document: SpecDocument, fit: string, grade: string): SpecDocument {
  return changed(document, fit, (each) => {
    const at = each.grades.findIndex((one) => one.grade === grade)
    const one = each.grades[at]
    if (one === undefined || at === 0) return each
    return { ...each, grades: each.grades.toSpliced(at, 1).toSpliced(at - 1, 0, one) }
  })
}

function withoutCells(fit: Fit, isGone: (cell: NonNullable<Fit['chart']>[number]) => boolean): Fit {
  const { chart, ...rest } = fit
  const left = chart?.filter((cell) => !isGone(cell))
  return left === undefined || left.length === 0 ? rest : { ...rest, chart: left }
}

function changed(document: SpecDocument, id: string, change: (fit: Fit) => Fit): SpecDocument {
  return { ...document, fits: document.fits.map((fit) => (fit.id === id ? change(fit) : fit)) }
}
