import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { specAt, type SpecUntil } from './in-their-time.ts'
import { roundBefore, roundOf, type SheetRound } from './plan.ts'

/** That a build went on by a newer revision of its spec. */
export interface SheetRevision extends Stamp {
  /** As the specs call themselves. */
  readonly before: string
  readonly after: string
  readonly specSha256: string
  readonly reason: string
  /** Whether a person said that what had to be was undone at the bench. */
  readonly takenApart: boolean
  /** The steps that were open again with it, the last on top first. */
  readonly opened: readonly SheetRound[]
}

export function revisionsOn(
  specs: readonly SpecUntil[],
  entries: readonly RecordedEvent[],
): readonly SheetRevision[] {
  const rows: SheetRevision[] = []
  let before = ''
  for (const [at, entry] of entries.entries()) {
    const { event } = entry
    if (event.type === 'build-started') before = event.specRevision
    if (event.type !== 'revision-taken-over') continue
    const spec = specAt(specs, entry.seq)
    const rounds = roundBefore(specs, entries.slice(0, at))
    const { specRevision: after, specSha256, reason, takenApart, opens } = event
    rows.push({
      ...stampOf(entry),
      ...{ before, after, specSha256, reason, takenApart: takenApart === true },
      opened: opens.map((id) => roundOf(spec, rounds, id)),
    })
    before = after
  }
  return rows
}
