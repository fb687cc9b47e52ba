import type { Bead, EngineSpec, Step } from '../../engine/index.ts'
import { openPulls } from '../../tightening/index.ts'
import type { BeadLaid, BuildState } from '../events/state.ts'
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
export function sealantClock(spec: EngineSpec, state: BuildState): SealantClock | null {
  if (state.finished || state.voided) return null
  return runningClocks(spec, state).reduce<SealantClock | null>(
    (first, clock) => (first === null || clock.endsAt_ms < first.endsAt_ms ? clock : first),
    null,
  )
}

/**
 * The beads whose joint a procedure closes and whose open time is over: somebody has to say why the joint is closed all the
 * same before the next fastener is pulled. Empty once that was said of each.
 *
 * @param now_ms Milliseconds since 1970.
 */
export function beadsOverTime(
  spec: EngineSpec,
  state: BuildState,
  procedure: string,
  now_ms: number,
): readonly Bead[] {
  return spec.beads.filter((bead) => {
    const laid = state.beads[bead.id]
    return (
      laid?.overTime === null &&
      now_ms > endOf(bead, laid) &&
      closingRuns(spec, bead).some((step) => step.procedure === procedure) &&
      !isJointClosed(spec, state, bead)
    )
  })
}

function runningClocks(spec: EngineSpec, state: BuildState): readonly SealantClock[] {
  return spec.beads.flatMap((bead): readonly SealantClock[] => {
    const laid = state.beads[bead.id]
    if (laid === undefined || closingRuns(spec, bead).length === 0 || isJointClosed(spec, state, bead))
      return []
    return [{ bead, laidAt: laid.at, endsAt_ms: endOf(bead, laid) }]
  })
}

/** When the open time of a bead is over, in milliseconds since 1970. */
function endOf({ openTimeMinutes }: Bead, { at }: BeadLaid): number {
  return Date.parse(at) + openTimeMinutes * 60_000
}
