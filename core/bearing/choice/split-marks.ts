/** A run of signs that were written without a blank between them. */
export interface Cut {
  readonly signs: readonly string[]
  /** How much of the run was read; less than its length where no sign begins. */
  readonly read: number
  /** Whether the run falls into as many signs in another way too: `111` is `11 1` and `1 11`. */
  readonly ambiguous: boolean
}

/** Cuts a run into the longest signs from its beginning. */
export function cutIntoSigns(run: string, known: readonly string[]): Cut {
  const longestFirst = [...known].sort((a, b) => b.length - a.length)
  const signs: string[] = []
  let at = 0
  for (;;) {
    const sign = longestFirst.find((each) => run.startsWith(each, at))
    if (sign === undefined) break
    signs.push(sign)
    at += sign.length
  }
  return { signs, read: at, ambiguous: at === run.length && waysToCut(run, known, signs.length) > 1 }
}

/** In how many ways the run falls into exactly `count` signs. */
function waysToCut(run: string, signs: readonly string[], count: number): number {
  let waysTo = new Map([[0, 1]])
  for (let taken = 0; taken < count; taken++) {
    const next = new Map<number, number>()
    for (const [at, ways] of waysTo)
      for (const sign of signs)
        if (run.startsWith(sign, at)) next.set(at + sign.length, (next.get(at + sign.length) ?? 0) + ways)
    waysTo = next
  }
  return waysTo.get(run.length) ?? 0
}
