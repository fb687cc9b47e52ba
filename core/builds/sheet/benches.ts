import type { BenchName } from '../events/bench-events.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'

/** An entry that says at which bench work on the build continued. */
export type SheetBench = Stamp &
  (
    | {
        readonly kind: 'handed-over'
        readonly from: BenchName
        readonly to: BenchName
        readonly note: string
      }
    | {
        readonly kind: 'taken-over'
        readonly from: BenchName | null
        readonly to: BenchName
        readonly reason: string
      }
    /** Two benches had gone on apart, from entry `entry` on. */
    | {
        readonly kind: 'settled'
        readonly bench: BenchName
        readonly entry: number
        readonly reason: string
        /** The line that it stands in is left. */
        readonly givesWay: boolean
      }
  )

/** How the build came from bench to bench, in order; empty where one bench made it. */
export function benchesOn(entries: readonly RecordedEvent[]): readonly SheetBench[] {
  return entries.flatMap((recorded): readonly SheetBench[] => {
    const { event } = recorded
    const stamp = stampOf(recorded)
    if (event.type === 'build-handed-over') {
      const { from, to, note } = event
      return [{ ...stamp, kind: 'handed-over', from, to, note }]
    }
    if (event.type === 'build-taken-over') {
      const { from, to, reason } = event
      return [{ ...stamp, kind: 'taken-over', from, to, reason }]
    }
    if (event.type !== 'fork-settled') return []
    const { bench, entry, reason, givesWay = false } = event
    return [{ ...stamp, kind: 'settled', bench, entry, reason, givesWay }]
  })
}
