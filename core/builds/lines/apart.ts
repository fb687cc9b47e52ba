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
 * where this one counts over each other. Two lines that were each settled over the other are apart as before.
 */
export function apartFrom(
  name: string,
  own: readonly RecordedEvent[],
  others: readonly OtherLine[],
): Problem | null {
  for (const { bench, events } of others) {
    const [first] = events
    const mine = own.find(({ seq }) => seq === first?.seq)
    if (first === undefined || mine === undefined || mine.hash === first.hash) continue
    const counts = isSettled(own, first)
    const isLeft = isSettled(events, mine)
    if (counts && !isLeft) continue
    const facts = { name, bench: bench.name, entry: first.seq }
    return isLeft && !counts ? problem('build-line-left', facts) : problem('build-apart', facts)
  }
  return null
}

/** Whether a line says that it counts over the one with this entry. */
export function isSettled(line: readonly RecordedEvent[], { seq, hash }: RecordedEvent): boolean {
  return line.some(({ event }) => event.type === 'fork-settled' && event.entry === seq && event.over === hash)
}
