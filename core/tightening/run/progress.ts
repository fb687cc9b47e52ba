import type { FastenerState } from '../../layout/index.ts'
import type { PassKind, Procedure } from '../../engine/index.ts'
import { asRun } from '../order/own-order.ts'
import { livePulls, openPulls, plannedIn, plannedPulls, pullKey } from './plan.ts'
import type { Flag, Pull, Run } from './run.ts'

/** How far one pass has come. */
export interface PassProgress {
  /** Counts from 0. */
  readonly pass: number
  readonly kind: PassKind
  readonly pulled: number
  readonly planned: number
  /** In the pass's order or the run's own, each with the pull that counts, null while there is none. */
  readonly fasteners: readonly { readonly fastener: string | null; readonly pull: Pull | null }[]
}

/** How far a run has come, pass by pass; all zeros before it is started. */
export function runProgress(procedure: Procedure, run: Run | undefined): readonly PassProgress[] {
  const live = livePulls(run)
  const ordered = asRun(procedure, run)
  return procedure.passes.map(({ kind }, pass) => {
    const fasteners = plannedIn(ordered, pass).map((planned) => ({
      fastener: planned.fastener,
      pull: live.get(pullKey(planned)) ?? null,
    }))
    const pulled = fasteners.filter(({ pull }) => pull !== null).length
    return { pass, kind, pulled, planned: fasteners.length, fasteners }
  })
}

/** What still wants an answer, oldest first. */
export function openFlags(run: Run | undefined): readonly Flag[] {
  return run?.flags.filter((flag) => flag.answer === null) ?? []
}

/** Whether every pull of every pass is made, every flag answered, and the run not paused. */
export function isRunDone(procedure: Procedure, run: Run | undefined): boolean {
  if (run === undefined || run.paused !== null || openFlags(run).length > 0) return false
  return openPulls(procedure, run).length === 0
}

export interface FastenerProgress {
  readonly state: FastenerState
  /** Share of the fastener's pulls that are made, 0 to 1. */
  readonly share: number
}

/**
 * How each fastener of a procedure is drawn, by id. Whose turn it is goes before all else, then an unanswered
 * flag, then who comes after. Before the run is started all wait.
 */
export function fastenerStates(
  procedure: Procedure,
  run: Run | undefined,
): ReadonlyMap<string, FastenerProgress> {
  const live = livePulls(run)
  const counts = new Map<string, { planned: number; made: number }>()
  for (const planned of plannedPulls(procedure)) {
    if (planned.fastener === null) continue
    const { planned: wanted, made } = counts.get(planned.fastener) ?? { planned: 0, made: 0 }
    counts.set(planned.fastener, { planned: wanted + 1, made: made + (live.has(pullKey(planned)) ? 1 : 0) })
  }
  const [next, afterNext] = run === undefined ? [] : openPulls(procedure, run)
  const flagged = new Set(openFlags(run).map(({ fastener }) => fastener))
  const stateOf = (fastener: string, share: number): FastenerState => {
    if (fastener === next?.fastener) return 'next'
    if (flagged.has(fastener)) return 'flagged'
    if (fastener === afterNext?.fastener) return 'after-next'
    if (share === 1) return 'done'
    return share === 0 ? 'waiting' : 'partly-done'
  }
  return new Map(
    [...counts].map(([fastener, { planned, made }]) => {
      const share = made / planned
      return [fastener, { state: stateOf(fastener, share), share }]
    }),
  )
}
