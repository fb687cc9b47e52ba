import { apartFrom, lineThatCounts, recordedAt, type OtherLine } from '../../../core/builds/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import { eventsIn, type Store } from '../../store/index.ts'

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

/** Which line of a build counts, its own or another; null where there is one alone, and where nobody settled it. */
export function whichCounts(store: Pick<Store, 'shop' | 'entries'>, build: string): 'here' | 'there' | null {
  const lines = store.shop.lines(build)
  if (lines.length === 0) return null
  const own = eventsIn(store.entries(build))
  const said = lines.map(({ entries }) => lineThatCounts(own, eventsIn(entries)))
  return said.includes('there') ? 'there' : said.includes(null) ? null : 'here'
}

/** The other bench whose line of a build this record has, from an entry on; null where it is this bench’s. */
export function recordedElsewhere(
  store: Pick<Store, 'shop' | 'entries' | 'bench'>,
  build: string,
  entry: number,
  nameOf: (bench: string) => string,
): string | null {
  const recorded = recordedAt(eventsIn(store.entries(build)), entry) ?? store.shop.of(build).begun?.bench
  if (recorded === undefined || recorded.id === store.bench) return null
  const name = nameOf(recorded.id)
  return name === recorded.id ? recorded.name : name
}

/** Why nobody goes on with the build here, where there is another line of it. */
export function apartOf(store: Store, build: string, nameOf: (bench: string) => string): Problem | null {
  const lines = otherLines(store, build, nameOf)
  if (lines.length === 0) return null
  return apartFrom(store.build(build)?.name ?? '', eventsIn(store.entries(build)), lines, (entry) =>
    recordedElsewhere(store, build, entry, nameOf),
  )
}
