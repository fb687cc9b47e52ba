import type { EngineSpec, Procedure } from '../../../../core/engine/index.ts'
import type { Outcome } from '../../../../core/problem/index.ts'
import {
  numberOf,
  prevailingIn,
  readRunning,
  runningBefore,
  runningTorque,
  withRunning,
  type AcceptanceWindow,
  type PlannedPull,
  type Reading,
  type Run,
  type RunCommand,
} from '../../../../core/tightening/index.ts'

interface OpenRun {
  readonly spec: EngineSpec
  readonly procedure: Procedure
  readonly run: Run | undefined
}

/** What a fastener takes to run down, where that goes on top of its torque: read once, where it is seated or first pulled by torque. */
export class RunningTorque {
  readonly #open: () => OpenRun
  /** As typed, for the pull that is next. */
  typed = $state('')

  constructor(open: () => OpenRun) {
    this.#open = open
  }

  isOnTop(planned: PlannedPull): boolean {
    return this.#prevailing(planned)?.counts === 'on-top'
  }
  /** Whether it was read at a pull before. */
  isKnown({ fastener }: PlannedPull): boolean {
    const { procedure, run } = this.#open()
    return runningBefore(procedure, run, fastener) !== null
  }
  /** As read before, else as typed, which may be refused. Null where nothing goes on top or nothing was typed. */
  readFor(planned: PlannedPull, unit: Reading['unit']): Outcome<Reading> | null {
    const prevailing = this.#prevailing(planned)
    if (prevailing?.counts !== 'on-top') return null
    const { spec, procedure, run } = this.#open()
    const before = runningBefore(procedure, run, planned.fastener)
    if (before !== null) return { ok: true, value: before }
    const { typed } = this
    return typed.trim() === ''
      ? null
      : readRunning(prevailing, { typed, unit }, numberOf(spec, planned.fastener))
  }
  /** What a pull is made to at the wrench: its window with what goes on top, as soon as that is known. */
  pulledTo<Window extends AcceptanceWindow | null>(
    window: Window,
    planned: PlannedPull,
    unit: Reading['unit'],
  ) {
    const running = this.readFor(planned, unit)
    return window?.kind === 'torque' && running?.ok === true
      ? withRunning(window, runningTorque(running.value))
      : window
  }
  /** Whether no setting can be given yet: what goes on top of the torque was not read, or cannot be right. */
  isAwaited(planned: PlannedPull, unit: Reading['unit']): boolean {
    return this.isOnTop(planned) && this.readFor(planned, unit)?.ok !== true
  }
  /** What was typed, as a pull takes it; nothing where nothing goes on top, or it was read before. */
  typedFor(
    planned: PlannedPull,
    unit: Reading['unit'],
  ): Pick<Extract<RunCommand, { type: 'pull' }>, 'running'> {
    const typed = this.typed.trim()
    if (typed === '' || !this.isOnTop(planned) || this.isKnown(planned)) return {}
    return { running: { typed, unit } }
  }

  #prevailing({ pass, fastener }: PlannedPull) {
    const { spec, procedure } = this.#open()
    return prevailingIn(spec, procedure.passes[pass]!, fastener)
  }
}
