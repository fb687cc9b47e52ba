import { lineThatCounts } from '../../core/builds/index.ts'
import { eventsIn, type BuildRow } from '../store/index.ts'
import type { Fork, ShopEntry } from './archive.ts'
import { previousIn } from './placing.ts'

type Line = readonly ShopEntry[]

/** All lines of a build from its first entry on: the archive’s own, and one for each end of what was sent beside it. */
export function wholeLines(own: Line, forks: readonly Fork[]): readonly Line[] {
  const beside = forks.flatMap(({ entries }) => entries)
  const all = new Map([...own, ...beside].map((entry) => [entry.sha256, entry]))
  const followed = new Set(beside.map((entry) => previousIn(entry)))
  const ends = beside.filter(({ sha256 }) => !followed.has(sha256))
  return [own, ...ends.map((end) => upTo(end, all))]
}

function upTo(end: ShopEntry, all: ReadonlyMap<string, ShopEntry>): Line {
  const line: ShopEntry[] = []
  // Of entries whose hashes are not their own, one may follow itself.
  for (let entry: ShopEntry | undefined = end; entry !== undefined && line.length <= all.size;) {
    line.unshift(entry)
    entry = all.get(previousIn(entry) ?? '')
  }
  return line
}

/** Of the lines that go on from what a record has: the one that counts, or the archive’s own while nobody settled it. Null for none. */
export function lineToGoOnWith(
  lines: readonly Line[],
  here: Pick<BuildRow, 'entries' | 'head_sha256'> | null,
): Line | null {
  const count = here?.entries ?? 0
  const [first, ...others] = lines.filter(
    (line) => line.length > count && (here === null || line[count - 1]?.sha256 === here.head_sha256),
  )
  if (first === undefined) return null
  return others.reduce((best, other) => (countsOver(other, best) ? other : best), first)
}

function countsOver(line: Line, other: Line): boolean {
  const parting = line.findIndex(({ sha256 }, at) => other[at]?.sha256 !== sha256)
  return parting >= 0 && lineThatCounts(eventsIn(other), eventsIn(line.slice(parting))) === 'there'
}
