import { describe, expect, it } from 'vitest'
import { recordedAt, type BuildEvent, type RecordedEvent } from '../../../../core/builds/index.ts'

const [first, second] = [
  { id: '0123456789ab', name: 'Bench 1' },
  { id: 'ba9876543210', name: 'Bench 2' },
]
const note: BuildEvent = { type: 'note-written', version: 1, step: 'marks', text: 'dry' }
const settled: BuildEvent = {
  ...{ type: 'fork-settled', version: 1, bench: second, entry: 2 },
  ...{ over: 'a'.repeat(64), reason: 'The engine stands here' },
}

const line = (events: readonly BuildEvent[]): readonly RecordedEvent[] =>
  events.map((event, index) => ({
    ...{ seq: index + 1, at: '2026-03-09T07:00:00.000Z', person: 'Ada', event },
    hash: String(index).repeat(64),
  }))

describe('the bench that recorded an entry', () => {
  it('is the one that has the build then; nothing says which one began it', () => {
    const events = line([
      note,
      { type: 'build-handed-over', version: 1, from: first, to: second, note: '' },
      note,
      { type: 'build-taken-over', version: 1, from: second, to: first, reason: 'No power' },
      note,
    ])
    expect([1, 2, 3, 4, 5].map((seq) => recordedAt(events, seq)?.name ?? null)).toEqual([
      ...[null, 'Bench 1', 'Bench 2', 'Bench 1', 'Bench 1'],
    ])
  })

  it('is any bench where it settles which line counts', () => {
    expect(recordedAt(line([note, settled, note]), 2)).toEqual(second)
    expect(recordedAt(line([note, settled, note]), 3)).toBeNull()
  })
})
