import type { MarkedPart } from '../../engine/index.ts'
import { splitMarks } from './split-marks.ts'

/** One mark of a typed string: from where to where it stands in it, and what it is. */
export interface PlacedMark {
  readonly from: number
  readonly to: number
  /** As the spec writes it; null for one that is worn away, undefined for what is no mark of the part. */
  readonly mark: string | null | undefined
}

const worn = '?'
const isWorn = /^[-\u2010-\u2015\u2212]+$/
const dashes = /[-\u2010-\u2015\u2212]+/

/**
 * Where each mark stands in what was typed, in order; `readMarks` says whether the whole can be taken. What is no mark takes
 * one place: a short word as a whole, else a character, so that the marks after it stay at their places.
 */
export function marksByPlace(typed: string, part: MarkedPart): readonly PlacedMark[] {
  const known = part.marks.map(({ mark }) => mark)
  const caseCounts = new Set(known.map((mark) => mark.toLowerCase())).size < new Set(known).size
  const fold = (text: string) => (caseCounts ? text : text.toLowerCase())
  const markOf = new Map<string, string | null>([
    [worn, null],
    ...known.map((mark) => [fold(mark), mark] as const),
  ])
  const folded = [...markOf.keys()]
  const dashParts = !folded.some((mark) => dashes.test(mark))
  const placed: PlacedMark[] = []
  for (const { 0: chunk, index } of typed.matchAll(/[^\s,;]+/g)) {
    if (isWorn.test(chunk) && !markOf.has(chunk)) {
      placed.push({ from: index, to: index + chunk.length, mark: null })
      continue
    }
    const runs = dashParts ? chunk.matchAll(/[^-\u2010-\u2015\u2212]+/g) : [{ 0: chunk, index: 0 }]
    for (const run of runs) placed.push(...marksOfRun(run[0], index + run.index, fold, folded, markOf))
  }
  return placed
}

function marksOfRun(
  run: string,
  from: number,
  fold: (text: string) => string,
  known: readonly string[],
  markOf: ReadonlyMap<string, string | null>,
): readonly PlacedMark[] {
  const placed: PlacedMark[] = []
  for (let at = 0; at < run.length;) {
    const { marks } = splitMarks(fold(run.slice(at)), known)
    for (const mark of marks) {
      const to = at + mark.length
      placed.push({ from: from + at, to: from + to, mark: markOf.get(mark) })
      at = to
    }
    if (at === run.length) break
    const isShortWord = at === 0 && run.length <= 3
    const to = isShortWord ? run.length : at + Array.from(run.slice(at))[0]!.length
    placed.push({ from: from + at, to: from + to, mark: undefined })
    at = to
  }
  return placed
}

/**
 * What was typed with another mark at one place, counted from 0, and all else as it was; `?` for one that is worn away. Places
 * before it that were not typed yet are filled with `·`.
 */
export function withMarkAt(typed: string, part: MarkedPart, place: number, mark: string): string {
  const placed = marksByPlace(typed, part)
  const old = placed[place]
  if (old === undefined) {
    const toRead = Array.from({ length: place - placed.length }, () => '·')
    return [typed.trimEnd(), ...toRead, mark].filter(Boolean).join(' ')
  }
  const [before, after] = [typed.slice(0, old.from), typed.slice(old.to)]
  // A mark of more than one character may run into its neighbours.
  if (part.marks.every((each) => each.mark.length === 1)) return before + mark + after
  return `${before.trimEnd()} ${mark} ${after.trimStart()}`.trim()
}
