import { apartFrom, type OtherLine, type RecordedEvent } from '../../../core/builds/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import type { Store, StoredEntry } from '../../store/index.ts'
import { readEntry } from '../open-build.ts'

/** What entries say, up to the first that this version does not know. */
export function eventsIn(entries: readonly StoredEntry[]): readonly RecordedEvent[] {
  const events: RecordedEvent[] = []
  for (const entry of entries) {
    const read = readEntry(entry)
    if (read === null || read.event === null) break
    events.push({ ...read, event: read.event })
  }
  return events
}

/** The other lines of a build, with the names of their benches. */
export function otherLines(
  store: Pick<Store, 'shop'>,
  build: string,
  nameOf: (bench: string) => string,
): readonly (OtherLine & { readonly line: string })[] {
  return store.shop.lines(build).map(({ line, bench, entries }) => ({
    line,
    bench: { id: bench, name: nameOf(bench) },
    events: eventsIn(entries),
  }))
}

/** Why nobody goes on with the build here, where there is another line of it. */
export function apartOf(store: Store, build: string, nameOf: (bench: string) => string): Problem | null {
  const lines = otherLines(store, build, nameOf)
  if (lines.length === 0) return null
  return apartFrom(store.build(build)?.name ?? '', eventsIn(store.entries(build)), lines)
}
