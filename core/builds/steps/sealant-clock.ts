import type { Bead, EngineSpec, Step } from '../../engine/index.ts'
import { openPulls } from '../../tightening/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import type { BuildState } from '../events/state.ts'
import { procedureOf, stepsBefore } from './steps.ts'

type RunStep = Extract<Step, { kind: 'run-procedure' }>

/** A bead whose joint is still open. */
export interface SealantClock {
  readonly bead: Bead
  /** UTC, ISO 8601: when it was laid. */
  readonly laidAt: string
  /** In milliseconds since 1970: when its open time is over. */
  readonly endsAt_ms: number
}

/**
 * The steps that close the joint of a bead: the procedures on its face, without those that come before the bead. Empty
 * where no procedure tightens that joint.
 */
export function closingRuns(spec: EngineSpec, { id, face }: Bead): readonly RunStep[] {
  const laidIn = spec.steps.find((step) => step.kind === 'lay-bead' && step.bead === id)
  const before = laidIn === undefined ? [] : stepsBefore(spec, laidIn)
  return spec.steps.filter(
    (step): step is RunStep =>
      step.kind === 'run-procedure' &&
      procedureOf(spec, step.procedure).face === face &&
      !before.includes(step),
  )
}

/** Whether every bolt that closes the joint of a bead is pulled in every pass; false where no procedure closes it. */
export function isJointClosed(spec: EngineSpec, state: BuildState, bead: Bead): boolean {
  const runs = closingRuns(spec, bead)
  return (
    runs.length > 0 &&
    runs.every(({ procedure }) => {
      const run = state.runs[procedure]
      return run !== undefined && openPulls(procedureOf(spec, procedure), run).length === 0
    })
  )
}

/**
 * The clock that runs now: of all beads that are laid and whose joint is not closed, the one whose time is over first.
 * Null when there is none, in a build that is finished or void, and for a joint that no procedure closes: nothing would
 * stop its clock.
 */
export function sealantClock(
  spec: EngineSpec,
  state: BuildState,
  entries: readonly RecordedEvent[],
): SealantClock | null {
  if (state.finished || state.voided) return null
  const clocks = spec.beads.flatMap((bead): readonly SealantClock[] => {
    const seq = state.beads[bead.id]
    if (seq === undefined || closingRuns(spec, bead).length === 0 || isJointClosed(spec, state, bead))
      return []
    const laidAt = entries.find((entry) => entry.seq === seq)?.at
    if (laidAt === undefined) return []
    return [{ bead, laidAt, endsAt_ms: Date.parse(laidAt) + bead.openTimeMinutes * 60_000 }]
  })
  return clocks.reduce<SealantClock | null>(
    (first, clock) => (first === null || clock.endsAt_ms < first.endsAt_ms ? clock : first),
    null,
  )
}
