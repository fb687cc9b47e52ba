import { sentenceOf } from '../../core/problem/index.ts'
import { firstBroken, openStore } from '../../electron/store/index.ts'

/** What the record of a folder holds that was said to be in it; every lack as a sentence. */
export async function lacksOf(
  folder: string,
  acknowledged: ReadonlyMap<string, number>,
): Promise<{ readonly lacks: readonly string[]; readonly entries: number }> {
  const opened = await openStore(folder, () => new Date())
  if (!opened.ok) return { lacks: [sentenceOf(opened.problem)], entries: 0 }
  const store = opened.value
  try {
    const lacks: string[] = []
    let entries = 0
    for (const build of new Set([...acknowledged.keys(), ...store.builds().map(({ id }) => id)])) {
      const there = store.entries(build)
      entries += there.length
      const expected = acknowledged.get(build) ?? 0
      if (there.length < expected) lacks.push(`${build} has ${there.length} of ${expected} entries`)
      const broken = firstBroken(build, there)
      if (broken !== null) lacks.push(`${build} is broken at entry ${broken}`)
    }
    return { lacks, entries }
  } finally {
    store.close()
  }
}
