import { expect } from 'vitest'
import { flagProblem, openFlags, type Flag, type PlannedPull } from '../../../../core/tightening/index.ts'
import { pull, type Bench } from '../bench.ts'
import { reached } from './nut-on-bench.ts'
import type { Hand } from './work-and-hands.ts'

/** The crank under its caps: each tightened one makes it turn harder, and one that was put on wrongly makes it stiff. */
export class CrankOnBench {
  readonly #bench: Bench
  /** The cap that makes it stiff. */
  #stiff: string | null = null

  constructor(bench: Bench) {
    this.#bench = bench
  }

  turns(planned: PlannedPull, { off }: Hand): void {
    if (off > 0.2) this.#stiff = planned.cap ?? null
    const tight = this.#bench.run!.pulls.filter(
      ({ turning, setAside }) => turning !== null && setAside === null,
    )
    const torque = 1 + 0.5 * tight.length + (this.#stiff === null ? 0 : 3.5)
    this.#bench.does(pull(planned, [String(torque), 'N·m']))
    reached.turned += 1
  }

  /** Loosens the cap that is named, and puts right what was wrong with it; gives what is loose now. */
  loosensCap(flag: Flag): readonly string[] {
    const bench = this.#bench
    const problem = flagProblem(bench.spec, bench.procedure, bench.run!, flag)
    if (problem.code !== 'turning-over') throw new Error(problem.code)
    const named =
      problem.facts.lookAt?.cap ?? bench.run!.pulls.find(({ number }) => number === flag.pull)!.cap
    const { fasteners } = bench.procedure.caps!.find(({ id }) => id === named)!
    for (const fastener of fasteners)
      bench.does({ type: 'loosen-fastener', fastener, reason: '', cause: 'crank-stiff' })
    expect(openFlags(bench.run).map(({ number }) => number)).not.toContain(flag.number)
    this.#stiff = null
    reached.capsLoosened += 1
    return fasteners
  }
}
