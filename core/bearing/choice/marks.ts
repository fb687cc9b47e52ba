import type { MarkedPart } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { splitMarks } from './split-marks.ts'

/** Marks in the order of a fit's positions; null where a mark is worn away. */
export type Marks = readonly (string | null)[]

const worn = '?'
const dash = /[-\u2010-\u2015\u2212]/
const onlyDashes = /^[-\u2010-\u2015\u2212]+$/

/**
 * The marks of a part as they are typed off it: `2 2 3 1`, `2231`, `2,2,3,1`, `2-2-3-1`, one for each position. `?`
 * anywhere, or a dash that stands alone, is a mark that is worn away. Upper and lower case are one unless the part's
 * marks differ by case. What is written without a blank is cut into the longest known marks.
 *
 * Refuses `mark-unknown`, `marks-too-few`, `marks-too-many`, and `marks-ambiguous` where a run of marks can be cut in
 * more than one way: it is never guessed at.
 */
export function readMarks(typed: string, part: MarkedPart, positions: readonly string[]): Outcome<Marks> {
  const known = part.marks.map(({ mark }) => mark)
  const caseCounts = new Set(known.map((mark) => mark.toLowerCase())).size < new Set(known).size
  const fold = (text: string) => (caseCounts ? text : text.toLowerCase())
  const markOf = new Map<string, string | null>([
    [worn, null],
    ...known.map((mark) => [fold(mark), mark] as const),
  ])
  const folded = [...markOf.keys()]
  const dashParts = !folded.some((mark) => dash.test(mark))

  const marks: (string | null)[] = []
  for (const chunk of typed.split(/[\s,;]+/).filter((each) => each !== '')) {
    if (onlyDashes.test(chunk) && !markOf.has(chunk)) {
      marks.push(null)
      continue
    }
    const runs = dashParts ? chunk.split(dash).filter((each) => each !== '') : [chunk]
    for (const run of runs) {
      const read = splitMarks(fold(run), folded)
      if (read.ambiguous) return refused('marks-ambiguous', { part: part.name, typed: run })
      marks.push(...read.marks.map((mark) => markOf.get(mark) ?? null))
      if (read.read === run.length) continue
      const position = positions[marks.length] ?? part.name
      return refused('mark-unknown', { position, part: part.name, mark: unknownAt(run, read.read), known })
    }
  }
  const counts = { part: part.name, read: marks.length, expected: positions.length }
  if (marks.length < positions.length) return refused('marks-too-few', counts)
  if (marks.length > positions.length) return refused('marks-too-many', counts)
  return done(marks)
}

/** A short run of which nothing was read is one unknown mark; in a longer one it is the character that stopped us. */
function unknownAt(run: string, at: number): string {
  return at === 0 && run.length <= 3 ? run : Array.from(run.slice(at))[0]!
}
