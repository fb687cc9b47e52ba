/** A run of marks that were written without a blank between them. */
export interface MarkSplit {
  readonly marks: readonly string[]
  /** How much of the run was read; less than its length where no mark begins. */
  readonly read: number
  /** Whether the run falls into as many marks in another way too: `111` is `11 1` and `1 11`. */
  readonly ambiguous: boolean
}

/** Cuts a run into the longest marks from its beginning. */
export function splitMarks(run: string, known: readonly string[]): MarkSplit {
  const longestFirst = [...known].sort((a, b) => b.length - a.length)
  const marks: string[] = []
  let at = 0
  for (;;) {
    const mark = longestFirst.find((each) => run.startsWith(each, at))
    if (mark === undefined) break
    marks.push(mark)
    at += mark.length
  }
  return { marks, read: at, ambiguous: at === run.length && splits(run, known, marks.length) > 1 }
}

/** In how many ways the run falls into exactly `count` marks. */
function splits(run: string, marks: readonly string[], count: number): number {
  let waysTo = new Map([[0, 1]])
  for (let marksSoFar = 0; marksSoFar < count; marksSoFar++) {
    const next = new Map<number, number>()
    for (const [at, ways] of waysTo)
      for (const mark of marks)
        if (run.startsWith(mark, at)) next.set(at + mark.length, (next.get(at + mark.length) ?? 0) + ways)
    waysTo = next
  }
  return waysTo.get(run.length) ?? 0
}
