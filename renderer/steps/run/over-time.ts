import { beadsOverTime } from '../../../core/builds/index.ts'
import type { OpenBuild } from '../../bench/open-build.svelte.ts'
import { nowEachSecond } from '../../parts/seconds.ts'

/** Whether the open time of the sealant in the joint of a procedure is over, and nobody has said yet why it is closed anyway. */
export class OverTime {
  readonly #openBuild: () => OpenBuild
  readonly #procedure: () => string

  constructor(openBuild: () => OpenBuild, procedure: () => string) {
    this.#openBuild = openBuild
    this.#procedure = procedure
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
