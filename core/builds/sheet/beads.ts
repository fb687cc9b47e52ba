import type { Bead, EngineSpec } from '../../engine/index.ts'
import { lastLivePull } from '../../tightening/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import type { BuildState } from '../events/state.ts'
import { closingRuns, isJointClosed } from '../steps/sealant-clock.ts'

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
  /** Why its joint was closed although the open time was over; null where nobody was asked. */
  readonly whyOver: string | null
}

export function beadsOn(
  spec: EngineSpec,
  state: BuildState,
  entries: readonly RecordedEvent[],
): readonly SheetBead[] {
  return spec.beads.map((bead) => {
    const { id, name, openTimeMinutes } = bead
    const entry = entries.find(({ seq }) => seq === state.beads[id]?.seq)
    const laid = entry === undefined ? null : stampOf(entry)
    const closed =
      laid !== null && isJointClosed(spec, state, bead) ? lastPullOf(spec, state, bead, entries) : null
    const took =
      closed === null ? null : Math.max(0, Math.round((Date.parse(closed.at) - Date.parse(laid!.at)) / 1000))
    return {
      ...{ name, openTimeMinutes, laid, closed, took_s: took },
      over: took !== null && took > openTimeMinutes * 60,
      whyOver: state.beads[id]?.overTime ?? null,
    }
  })
}

/** The last pull that counts of those that close the joint of a bead. What is said about a flag later closes nothing. */
function lastPullOf(
  spec: EngineSpec,
  state: BuildState,
  bead: Bead,
  entries: readonly RecordedEvent[],
): Stamp | null {
  const last = new Map(
    closingRuns(spec, bead).map(({ procedure }) => [procedure, lastLivePull(state.runs[procedure])?.number]),
  )
  const entry = entries.findLast(
    ({ event }) => event.type === 'fastener-pulled' && last.get(event.procedure) === event.pull,
  )
  return entry === undefined ? null : stampOf(entry)
}
