/** Letters of holes and shafts that bearings, bushes and crankcases have. */
export const letters = [
  ...(['D', 'E', 'F', 'G', 'H', 'JS', 'K', 'M', 'N', 'P', 'R', 'S'] as const),
  ...(['d', 'e', 'f', 'g', 'h', 'js', 'k', 'm', 'n', 'p', 'r', 's'] as const),
]
export type Letter = (typeof letters)[number]

/** How far the limits of a size lie from it, in µm. */
export interface Deviations {
  readonly lower: number
  readonly upper: number
}

/** Up to and including so many millimetres: the finer steps of ISO 286-1, for the deviations of r and s. */
const fineSteps = [
  3, 6, 10, 18, 30, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
] as const

/** The same for tolerances, and for the deviations that do not change within one of them. */
export const steps = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500] as const

/**
 * The deviation nearest to the size, in µm, away from it: of shafts the upper one of d to h and the lower one of k to s (ISO
 * 286-1, tables 4 and 5). k is for grades 4 to 7; in coarser ones it is 0. d to h and m to p up to 180 mm, and k above it, were
 * read in print, the others are from memory.
 */
const table: Readonly<Record<'d' | 'e' | 'f' | 'g' | 'k' | 'm' | 'n' | 'p', readonly number[]>> = {
  d: [20, 30, 40, 50, 65, 80, 100, 120, 145, 170, 190, 210, 230],
  e: [14, 20, 25, 32, 40, 50, 60, 72, 85, 100, 110, 125, 135],
  f: [6, 10, 13, 16, 20, 25, 30, 36, 43, 50, 56, 62, 68],
  g: [2, 4, 5, 6, 7, 9, 10, 12, 14, 15, 17, 18, 20],
  k: [0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5],
  m: [2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23],
  n: [4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40],
  p: [6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68],
}
const fineTable: Readonly<Record<'r' | 's', readonly number[]>> = {
  r: [10, 15, 19, 23, 28, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132],
  s: [14, 19, 23, 28, 35, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208, 232, 252],
}

/** IT of the grade that is asked for, and of the next finer one where there is a table for it, in µm. */
interface Tolerances {
  readonly tolerance: number
  readonly finer: number | null
}

/** The limits of a class about a size in mm, which is within the tables; null for a class that is not in them. */
export function deviationsOf(
  letter: Letter,
  grade: number,
  mm: number,
  { tolerance, finer }: Tolerances,
): Deviations | null {
  if (letter === 'JS' || letter === 'js') return { lower: -tolerance / 2, upper: tolerance / 2 }
  const shaft = letter.toLowerCase() as keyof typeof table | keyof typeof fineTable | 'h'
  const isHole = letter !== shaft
  const nearestDeviation = deviationOf(shaft, grade, mm)
  switch (shaft) {
    case 'd':
    case 'e':
    case 'f':
    case 'g':
    case 'h':
      return isHole
        ? { lower: nearestDeviation, upper: nearestDeviation + tolerance }
        : { lower: -nearestDeviation - tolerance, upper: 0 - nearestDeviation }
    case 'k':
    case 'm':
    case 'n':
    case 'p':
    case 'r':
    case 's': {
      if (!isHole) return { lower: nearestDeviation, upper: nearestDeviation + tolerance }
      const upper = upperOfHole(shaft, grade, mm, { tolerance, finer })
      return upper === null ? null : { lower: upper - tolerance, upper }
    }
    default:
      return shaft satisfies never
  }
}

function deviationOf(
  letter: keyof typeof table | keyof typeof fineTable | 'h',
  grade: number,
  mm: number,
): number {
  if (letter === 'h') return 0
  if (letter === 'k' && grade > 7) return 0
  if (letter === 'r' || letter === 's')
    return fineTable[letter][fineSteps.findIndex((upTo) => mm <= upTo)] ?? 0
  return table[letter][steps.findIndex((upTo) => mm <= upTo)] ?? 0
}

/** The finest and the coarsest grade for which the holes K to S are in use here. */
const tightHoles = { finest: 6, coarsest: 8 } as const

/**
 * ES = −ei + Δ with Δ = IT of the grade less IT of the next finer one, of sizes above 3 mm, for K, M and N up to grade 8 and P, R
 * and S up to grade 7 (ISO 286-1, 4.3.2.4, and its one exception, M6 of 250 to 315 mm).
 */
function upperOfHole(
  letter: 'k' | 'm' | 'n' | 'p' | 'r' | 's',
  grade: number,
  mm: number,
  { tolerance, finer }: Tolerances,
): number | null {
  if (grade < tightHoles.finest || grade > tightHoles.coarsest || finer === null) return null
  if (letter === 'm' && grade === 6 && mm > 250 && mm <= 315) return -9
  const hasDelta = mm > 3 && (grade < 8 || letter === 'k' || letter === 'm' || letter === 'n')
  // K8 has the deviation of k in the fine grades: it is the hole whose fit with a finer shaft is the same.
  return (hasDelta ? tolerance - finer : 0) - deviationOf(letter, Math.min(grade, 7), mm)
}
