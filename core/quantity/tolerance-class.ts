import { done, refused, type Outcome } from '../problem/index.ts'
import { asTyped } from './as-typed.ts'
import { formatNumber } from './rounding.ts'
import { inMillimetres, lengthOf, parseLength, sum, type Length } from './length.ts'
import { deviationsOf, letters, steps, type Letter } from './fundamental-deviations.ts'

/** The limits that a tolerance class gives a size, both included. */
export interface ClassLimits {
  /** As on a drawing: `62 H6`. */
  readonly name: string
  readonly nominal: Length
  readonly least: Length
  readonly most: Length
}

const grades = [5, 6, 7, 8, 9, 10, 11] as const
type Grade = (typeof grades)[number]

/** IT5 to IT11 in µm for each of the steps, from ISO 286-1, table 1. */
const tolerances: Readonly<Record<Grade, readonly number[]>> = {
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400],
}

const written = /^(.+?)\s*(JS|js|[D-HKMNPRSd-hkmnprs])\s?(\d{1,2})$/

/**
 * The limits of a size with its tolerance class, as a drawing has it: `62 mm H6`, `62 H6` (ISO 286: sizes in millimetres). Of holes
 * D to H, JS, K, M, N, P, R and S, of shafts the same in small letters; grades 5 to 11, K to S of holes 6 to 8; sizes above zero
 * up to 500 mm.
 *
 * Refuses what `parseLength` refuses, `tolerance-class-unknown`, `tolerance-class-size`.
 */
export function limitsOfClass(typed: string): Outcome<ClassLimits> {
  const [, size = '', letter = '', grade = ''] = written.exec(typed.trim()) ?? []
  const unknown = () => refused('tolerance-class-unknown', { typed: asTyped(typed) })
  if (!isLetter(letter) || !isGrade(Number(grade))) return unknown()
  const nominal = parseLength(size, 'mm')
  if (!nominal.ok) return nominal
  const limits = limitsAt(nominal.value, letter, Number(grade) as Grade)
  if (limits === 'no-such-size') return refused('tolerance-class-size', { size: size.trim() })
  return limits === 'no-such-class' ? unknown() : done(limits)
}

/** The classes of a nominal size that have just these limits, as on a drawing: none for most, `H6` say for some. */
export function classesWith(
  nominal: Length,
  { least, most }: { readonly least: Length; readonly most: Length },
): readonly string[] {
  return letters.flatMap((letter) =>
    grades.flatMap((grade) => {
      const limits = limitsAt(nominal, letter, grade)
      const same = typeof limits === 'object' && limits.least === least && limits.most === most
      return same ? `${letter}${grade}` : []
    }),
  )
}

function limitsAt(
  nominal: Length,
  letter: Letter,
  grade: Grade,
): ClassLimits | 'no-such-size' | 'no-such-class' {
  const mm = inMillimetres(nominal)
  const step = steps.findIndex((upTo) => mm <= upTo)
  if (mm <= 0 || step < 0) return 'no-such-size'
  const tolerance = (of: Grade) => tolerances[of][step] ?? 0
  const finer = grades.find((each) => each === grade - 1)
  const deviations = deviationsOf(letter, grade, mm, {
    tolerance: tolerance(grade),
    finer: finer === undefined ? null : tolerance(finer),
  })
  if (deviations === null) return 'no-such-class'
  const { lower, upper } = deviations
  return {
    name: `${formatNumber(mm, 3).replace(/\.?0+$/, '')} ${letter}${grade}`,
    nominal,
    least: sum(nominal, lengthOf(lower, 'µm')),
    most: sum(nominal, lengthOf(upper, 'µm')),
  }
}

function isLetter(text: string): text is Letter {
  return letters.some((each) => each === text)
}

function isGrade(value: number): value is Grade {
  return grades.some((each) => each === value)
}
