import { buildEvent } from '../../core/builds/index.ts'
import type { BuildEvent } from '../../core/builds/index.ts'
import type { EntryBody } from './chain/chain.ts'

/** What the list of builds says of a build, so far as it follows from the entries. */
export interface Listing {
  readonly year: number
  readonly name: string
  readonly serial: string
  readonly spec_sha256: string
  readonly started_at_utc: string
  readonly finished: 0 | 1
  readonly voided: 0 | 1
  readonly flagged: 0 | 1
}

const knownTypes: ReadonlySet<string> = new Set(
  buildEvent.options.flatMap(({ shape }) => [...shape.type.values]),
)

/** Whether this version made events of that shape. What comes after one that it did not make is not in the list. */
export function isOfThisVersion(event: unknown): event is BuildEvent {
  if (typeof event !== 'object' || event === null || !('type' in event)) return false
  return (
    typeof event.type === 'string' && knownTypes.has(event.type) && 'version' in event && event.version === 1
  )
}

/** What the list says after one more entry; null where the entries do not begin a build. */
export function listingAfter(
  before: Listing | null,
  { at, event }: Pick<EntryBody, 'at' | 'event'>,
): Listing | null {
  if (before === null) {
    if (event.type !== 'build-started') return null
    const { name, serial, specSha256 } = event
    return {
      year: Number(at.slice(0, 4)),
      name,
      serial,
      spec_sha256: specSha256,
      started_at_utc: at,
      finished: 0,
      voided: 0,
      flagged: 0,
    }
  }
  const mark = markOf(event)
  return mark === null || before[mark] === 1 ? before : { ...before, [mark]: 1 }
}

/** What an entry marks its build as in the list; null for most. */
export function markOf(event: BuildEvent): 'finished' | 'voided' | 'flagged' | null {
  switch (event.type) {
    case 'build-finished':
      return 'finished'
    case 'build-voided':
      return 'voided'
    case 'fastener-pulled':
      return event.verdict === 'unread' || event.verdict === 'within' ? null : 'flagged'
    case 'check-answered':
      return event.verdict === 'good' ? null : 'flagged'
    case 'limit-measured':
      return event.verdict === 'outside' ? 'flagged' : null
    case 'parts-ticked':
      return event.reason === null ? null : 'flagged'
    case 'problem-noted':
    case 'step-skipped':
      return 'flagged'
    case 'build-started':
    case 'marks-noted':
    case 'shells-chosen':
    case 'half-fitted':
    case 'half-taken-out':
    case 'part-fitted':
    case 'part-taken-out':
    case 'limit-accepted':
    case 'rings-fitted':
    case 'rings-taken-off':
    case 'crank-turned':
    case 'turning-accepted':
    case 'turning-voided':
    case 'place-done':
    case 'place-undone':
    case 'measured-part-replaced':
    case 'photo-added':
    case 'photo-skipped':
    case 'photo-withdrawn':
    case 'step-reopened':
    case 'revision-taken-over':
    case 'skip-taken-back':
    case 'note-written':
    case 'ticks-removed':
    case 'part-left-over':
    case 'parts-counted':
    case 'bead-laid':
    case 'bead-wiped-off':
    case 'step-confirmed':
    case 'step-sent-back':
    case 'build-amended':
    case 'build-handed-over':
    case 'build-taken-over':
    case 'fork-settled':
    case 'readings-noted':
    case 'readings-withdrawn':
    case 'undersize-declared':
    case 'basis-decided':
    case 'shells-pinned':
    case 'shells-released':
    case 'tray-noted':
    case 'thread-read':
    case 'run-started':
    case 'fasteners-declared-new':
    case 'pull-taken-back':
    case 'pull-read-again':
    case 'flag-answered':
    case 'fastener-loosened':
    case 'fastener-replaced':
    case 'pass-repeated':
    case 'run-restarted':
    case 'run-paused':
    case 'run-resumed':
      return null
    default:
      event satisfies never
      return null // of a newer program: what it means is not known here
  }
}
