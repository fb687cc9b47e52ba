import { beadsOverTime } from '../../../core/builds/index.ts'
import type { OpenBuild } from '../../bench/open-build.svelte.ts'

/** Whether the open time of the sealant in the joint of a procedure is over, and nobody has said yet why it is closed anyway. */
export class OverTime {
  readonly #openBuild: () => OpenBuild
  readonly #procedure: () => string
  #now = $state(Date.now())

  constructor(openBuild: () => OpenBuild, procedure: () => string) {
    this.#openBuild = openBuild
    this.#procedure = procedure
  }

  /** By this computer's clock, or because the host said so by its own. */
  readonly isAsked: boolean = $derived.by(() => {
    const { spec, state, problem } = this.#openBuild()
    return (
      problem?.code === 'sealant-over-time' ||
      beadsOverTime(spec, state, this.#procedure(), this.#now).length > 0
    )
  })

  /** Lets the clock go on, until what it gives back is called. */
  run(): () => void {
    const clock = setInterval(() => (this.#now = Date.now()), 1000)
    return () => clearInterval(clock)
  }
}
