import { nowEachSecond } from '../../parts/seconds.ts'

/** The time since a pull, against how long a procedure waits after it. */
export class WaitingTime {
  readonly #since: () => string | null
  readonly #wait: () => number

  /** `since` is the time of the pull before, ISO 8601; `wait` how long is waited, in seconds, 0 for not at all. */
  constructor(since: () => string | null, wait: () => number) {
    this.#since = since
    this.#wait = wait
  }

  /** Whole seconds, by the clock as it is now. */
  get waited(): number {
    const since = this.#since()
    return since === null ? 0 : Math.max(0, Math.floor((nowEachSecond() - Date.parse(since)) / 1000))
  }
  /** Whole seconds; 0 once it is over. */
  get left(): number {
    return Math.max(0, Math.ceil(this.#wait() - this.waited))
  }
  /** Share of the wait that is over, 0 to 1. */
  get share(): number {
    return this.#wait() === 0 ? 1 : Math.min(1, this.waited / this.#wait())
  }
}
