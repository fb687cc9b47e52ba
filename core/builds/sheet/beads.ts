import type { EngineSpec } from '../../engine/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import type { BuildState } from '../events/state.ts'

/** One bead of sealant and the time its joint took. */
export interface SheetBead {
  readonly name: string
  readonly openTimeMinutes: number
  /** Null while it is not laid, or was wiped off. */
  readonly laid: Stamp | null
  /** When the last fastener of its joint was pulled; null while some are left, or no procedure tightens it. */
  readonly closed: Stamp | null
  /** From the one to the other in whole seconds, never below 0; null where either is missing. */
  readonly took_s: number | null
  readonly over: boolean
}

/** `doneBy` says of each step after which entry it was done and stayed so, as `doneSince` finds it. */
export function beadsOn(
  spec: EngineSpec,
  state: BuildState,
  entries: readonly RecordedEvent[],
  doneBy: ReadonlyMap<string, Stamp>,
): readonly SheetBead[] {
  return spec.beads.map(({ id, name, face, openTimeMinutes }) => {
    const entry = entries.find(({ seq }) => seq === state.beads[id])
    const laid = entry === undefined ? null : stampOf(entry)
    const runs = spec.steps.filter(
      (step) =>
        step.kind === 'run-procedure' &&
        spec.procedures.some((procedure) => procedure.id === step.procedure && procedure.face === face),
    )
    const done = runs.map((step) => doneBy.get(step.id) ?? null)
    const closed = done.reduce<Stamp | null>(
      (latest, stamp) => (stamp !== null && (latest === null || stamp.seq > latest.seq) ? stamp : latest),
      null,
    )
    const isClosed = closed !== null && laid !== null && closed.seq > laid.seq && !done.includes(null)
    const took = isClosed
      ? Math.max(0, Math.round((Date.parse(closed.at) - Date.parse(laid.at)) / 1000))
      : null
    return {
      ...{ name, openTimeMinutes, laid, closed: isClosed ? closed : null, took_s: took },
      over: took !== null && took > openTimeMinutes * 60,
    }
  })
}
