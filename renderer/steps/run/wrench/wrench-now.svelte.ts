import {
  runningTorque,
  torqueWindowIn,
  usableFor,
  windowNow,
  withRunning,
  type UsableWrench,
  type WrenchChoice,
} from '../../../../core/tightening/index.ts'
import type { Bench } from '../../../bench/bench.svelte.ts'
import { today } from '../../../parts/time.ts'
import type { RunDesk } from '../run-desk.svelte.ts'

/** The wrenches of the shop for what is pulled now, or for what is open for the fastener that was tapped. */
export class WrenchNow {
  readonly #desk: RunDesk
  readonly #bench: Bench

  constructor(desk: RunDesk, bench: Bench) {
    this.#desk = desk
    this.#bench = bench
  }

  /** Null where nothing is pulled by a wrench, or no wrench of the shop is known or can be set for it. */
  readonly choice: WrenchChoice | null = $derived.by(() => {
    const { setups } = this.#bench.rack
    const torque = this.#torque
    if (torque === null || setups.length === 0) return null
    const chosen = usableFor(setups, torque, today())
    return chosen.ok ? chosen.value : null
  })

  /** Null for one that is not among the shop's. */
  readonly heldWrench: UsableWrench | null = $derived.by(() => this.#desk.heldFor(this.choice))

  /**
   * A torque, or that of a stretch which has one as well, with what goes on top of it. Null until that is read: a wrench that was
   * set before would be set wrong.
   */
  get #torque() {
    const { task, procedure, run } = this.#desk
    const planned = task.kind === 'pull' ? task.next : task.kind === 'picked' ? task.open : null
    if (planned === null) return null
    const window = task.kind === 'pull' ? task.window : windowNow(procedure, run, planned)
    const torqueAsked = window && torqueWindowIn(window)
    const unit = this.#bench.settings.units.torque
    if (!torqueAsked || this.#desk.running.isAwaited(planned, unit)) return null
    const running = this.#desk.running.readFor(planned, unit)
    return withRunning(torqueAsked, runningTorque(running?.ok ? running.value : null))
  }
}
