import { problem, type Problem } from '../../problem/index.ts'
import type { BenchName } from '../events/bench-events.ts'
import type { RecordedEvent } from '../events/events.ts'

/** What another bench recorded of the same build, from the entry on with which it is another one than here. */
export interface OtherLine {
  readonly bench: BenchName
  /** In order, without a gap; at least one. */
  readonly events: readonly RecordedEvent[]
}

/**
 * Why a build of which there is another line may not be continued: nobody has settled which line counts, or the other one does. Null
 * where this one counts over each other. `recordedBy` names the bench whose line this is from an entry on, where it is not the bench here. Two lines that say the opposite of one another are apart as before, until one is told otherwise.
 */
export function apartFrom(
  name: string,
  own: readonly RecordedEvent[],
  others: readonly OtherLine[],
  recordedBy: (entry: number) => string | null = () => null,
): Problem | null {
  for (const { bench, events } of others) {
    const [first] = events
    const mine = own.find(({ seq }) => seq === first?.seq)
    if (first === undefined || mine === undefined || mine.hash === first.hash) continue
    const counts = lineThatCounts(own, events)
    if (counts === 'here') continue
    const facts = { name, bench: bench.name, entry: first.seq, own: recordedBy(first.seq) }
    return counts === 'there' ? problem('build-line-left', facts) : problem('build-apart', facts)
  }
  return null
}

/** Which of a build's own entries and another line counts; null while nobody has settled it, and where the two contradict one another. */
export function lineThatCounts(
  own: readonly RecordedEvent[],
  other: readonly RecordedEvent[],
): 'here' | 'there' | null {
  const [first] = other
  const mine = own.find(({ seq }) => seq === first?.seq)
  if (first === undefined || mine === undefined) return null
  const [here, there] = [whatItSays(own, first), whatItSays(other, mine)]
  if (here === there) return null
  return here === 'counts' || there === 'gives-way' ? 'here' : 'there'
}

/** What a line says of itself and the one with this entry: the last word counts. */
function whatItSays(
  line: readonly RecordedEvent[],
  { seq, hash }: RecordedEvent,
): 'counts' | 'gives-way' | null {
  const event = line.findLast(
    (each) => each.event.type === 'fork-settled' && each.event.entry === seq && each.event.over === hash,
  )?.event
  if (event?.type !== 'fork-settled') return null
  return event.givesWay ? 'gives-way' : 'counts'
}
