import { beadsOverTime, sealantClock } from '../../../core/builds/index.ts'
import type { OpenBuild } from '../../bench/open-build.svelte.ts'
import { nowEachSecond } from '../../parts/seconds.ts'

/** The open time of the sealant in the joint of a procedure: whether it is over, and whether somebody has to say why the joint is closed anyway. */
export class OverTime {
  readonly #openBuild: () => OpenBuild
  readonly #procedure: () => string

  constructor(openBuild: () => OpenBuild, procedure: () => string) {
    this.#openBuild = openBuild
    this.#procedure = procedure
  }

  /** Whatever was said of it: a joint that is still open can be begun again. */
  get isOver(): boolean {
    const { spec, state } = this.#openBuild()
    const clock = sealantClock(spec, state)
    return clock !== null && nowEachSecond() > clock.endsAt_ms
  }

  /** By this computer's clock, or because the host said so by its own. */
  get isAsked(): boolean {
    const { spec, state, problem } = this.#openBuild()
    return (
      problem?.code === 'sealant-over-time' ||
      beadsOverTime(spec, state, this.#procedure(), nowEachSecond()).length > 0
    )
  }
}
