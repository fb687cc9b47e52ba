import type { BenchName } from '../events/bench-events.ts'
import type { RecordedEvent } from '../events/events.ts'

/** At which bench an entry was recorded, as it and those before it say; null for the bench that began the build. */
export function recordedAt(line: readonly RecordedEvent[], seq: number): BenchName | null {
  const event = line.find((entry) => entry.seq === seq)?.event
  switch (event?.type) {
    case 'build-handed-over':
      return event.from
    case 'build-taken-over':
      return event.to
    case 'fork-settled':
      return event.bench
    default:
      return holderBefore(line, seq)
  }
}

function holderBefore(line: readonly RecordedEvent[], seq: number): BenchName | null {
  const moved = line.findLast(
    (entry) =>
      entry.seq < seq &&
      (entry.event.type === 'build-handed-over' || entry.event.type === 'build-taken-over'),
  )?.event
  return moved !== undefined && 'to' in moved ? moved.to : null
}
