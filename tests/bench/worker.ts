import { sentenceOf } from '../../core/problem/index.ts'
import { evolve, replay, type BuildCommand, type BuildState } from '../../core/builds/index.ts'
import type { Output } from '../../core/contract/index.ts'
import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import type { AnswerRequest } from '../../electron/requests/index.ts'
import { nextCommand } from '../electron/mechanic.ts'

/** An open build: what the window would hold of it. */
export interface OpenBuild {
  readonly id: string
  readonly spec: EngineSpec
  state: BuildState
}

/** Works a build on, over as many builds as are needed, and stops before each pull. */
export class Worker {
  readonly #answer: AnswerRequest
  #build: OpenBuild | null = null

  constructor(answer: AnswerRequest) {
    this.#answer = answer
  }

  /** Does everything up to the next pull, and gives that. */
  async untilPull(): Promise<{ build: OpenBuild; pull: BuildCommand }> {
    for (;;) {
      this.#build ??= await this.#begin()
      const command = nextCommand(this.#build.spec, this.#build.state)
      if (command === null) this.#build = null
      else if (command.type === 'pull') return { build: this.#build, pull: command }
      else await this.act(this.#build, command)
    }
  }

  async act(build: OpenBuild, command: BuildCommand): Promise<void> {
    const input = { build: build.id, after: build.state.seq, person: 'Ana Ruiz', command }
    const answer = await this.#answer('builds.act', input)
    if (!answer.ok) throw new Error(sentenceOf(answer.problem))
    build.state = (answer.value as Output<'builds.act'>).events.reduce(evolve, build.state)
  }

  async #begin(): Promise<OpenBuild> {
    const input = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' }
    const answer = await this.#answer('builds.start', input)
    if (!answer.ok) throw new Error(sentenceOf(answer.problem))
    const { line, specText, events } = answer.value as Output<'builds.start'>
    const read = readSpec(specText)
    if (!read.ok) throw new Error('the spec cannot be read')
    return { id: line.id, spec: read.spec, state: replay(events) }
  }
}
