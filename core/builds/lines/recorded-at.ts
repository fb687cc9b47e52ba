import type { BenchName } from '../events/bench-events.ts'
import { benchOf } from '../events/bench-of.ts'
import type { RecordedEvent } from '../events/events.ts'

/** At which bench an entry was recorded, as it and those before it say; null for the bench that began the build. */
export function recordedAt(line: readonly RecordedEvent[], seq: number): BenchName | null {
  const entry = line.find((each) => each.seq === seq)
  return (entry && benchOf(entry.event)) ?? holderBefore(line, seq)
}

function holderBefore(line: readonly RecordedEvent[], seq: number): BenchName | null {
  const moved = line.findLast(
    (entry) =>
      entry.seq < seq &&
      (entry.event.type === 'build-handed-over' || entry.event.type === 'build-taken-over'),
  )?.event
  return moved !== undefined && 'to' in moved ? moved.to : null
}
