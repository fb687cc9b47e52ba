import type { EngineSpec, Procedure } from '../../engine/index.ts'
import { numberOf, type Flag, type FlagAnswer } from '../../tightening/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import type { BuildState } from '../events/state.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { entriesOf } from './entries-of.ts'

export interface SheetFlag {
  readonly number: number
  readonly about: Flag['about']
  /** As on the drawing; null where it is about none. */
  readonly fastener: string | null
  readonly pull: number | null
  /** The problem in the person's own words. */
  readonly text: string | null
  readonly raised: Stamp
  readonly answer: (Stamp & { readonly text: FlagAnswer }) | null
}

/** Flags are numbered as the run numbers them; who raised and answered each is in the entries. */
export function flagsOn(
  spec: EngineSpec,
  state: BuildState,
  procedure: Procedure,
  own: readonly RecordedEvent[],
): readonly SheetFlag[] {
  const raisedBy = own.filter(
    ({ event }) =>
      event.type === 'problem-noted' ||
      (event.type === 'fastener-pulled' && event.verdict !== 'unread' && event.verdict !== 'within') ||
      (event.type === 'pull-read-again' && event.verdict !== 'within'),
  )
  return (state.runs[procedure.id]?.flags ?? []).flatMap(
    ({ number, about, fastener, pull, text, answer }) => {
      const raised = raisedBy[number - 1]
      const answered =
        entriesOf(own, 'flag-answered').find(({ event }) => event.flag === number) ??
        entriesOf(own, 'pull-read-again').find(
          ({ seq, event }) => event.pull === pull && raised !== undefined && seq > raised.seq,
        ) ??
        entriesOf(own, 'pull-taken-back').find(({ event }) => event.pull === pull) ??
        answeredByBeginning(own, raised, fastener, about)
      if (raised === undefined) return []
      return [
        {
          number,
          about,
          fastener: numberOf(spec, fastener),
          pull,
          text,
          raised: stampOf(raised),
          answer: answer === null || answered === undefined ? null : { ...stampOf(answered), text: answer },
        },
      ]
    },
  )
}

/** What sets a pull aside answers for it, and a new fastener for one that had too much. */
function answeredByBeginning(
  own: readonly RecordedEvent[],
  raised: RecordedEvent | undefined,
  fastener: string | null,
  about: Flag['about'],
): RecordedEvent | undefined {
  return own.find(({ seq, event }) => {
    if (raised === undefined || seq <= raised.seq) return false
    if (about === 'over') return event.type === 'fastener-replaced' && event.fastener === fastener
    return (
      event.type === 'run-restarted' ||
      event.type === 'pass-repeated' ||
      (event.type === 'fastener-loosened' && event.fastener === fastener)
    )
  })
}
