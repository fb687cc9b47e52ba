import { sampleFacts, type Sample } from '../../core/builds/index.ts'
import type { Client, StoredBuild } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Language, Words } from '../../core/words/index.ts'
import type { Guide } from '../help/guide.ts'
import type { Crew } from '../people/crew.svelte.ts'

/** What the bench does with a build that was begun. */
interface AtTheBench {
  readonly words: () => Words
  readonly language: () => Language
  /** Other windows hear of it. */
  readonly begun: (build: StoredBuild) => void
  /** Null once it is shown; else why everything stays as it is. */
  readonly show: (build: StoredBuild) => Promise<Problem | null>
  readonly report: (problem: Problem) => void
}

/** The ways to begin a build at this bench: on an engine, as a demo, with a note beside each step. */
export class NewBuilds {
  readonly #client: Client
  readonly #crew: Crew
  readonly #guide: Guide
  readonly #bench: AtTheBench

  constructor(client: Client, crew: Crew, guide: Guide, bench: AtTheBench) {
    this.#client = client
    this.#crew = crew
    this.#guide = guide
    this.#bench = bench
  }

  async start(
    engine: string,
    name: string,
    serial: string,
    person: string,
    apprentice: boolean,
  ): Promise<Problem | null> {
    const newBuild = { engine, name, serial, person, apprentice }
    const answer = await this.#client.request('builds.start', newBuild)
    return answer.ok ? this.#begin(answer.value, person) : answer.problem
  }

  /** A demo build, for a bench without others. Who is at the bench stays; nobody gives way to its mechanic. */
  async tryIt(sample: Sample) {
    const answer = await this.#client.request('builds.try', { sample, language: this.#bench.language() })
    if (!answer.ok) return this.#bench.report(answer.problem)
    const mechanic = this.#crew.name === '' ? answer.value.events.at(-1)!.person : null
    const problem = await this.#begin(answer.value, mechanic)
    if (problem) this.#bench.report(problem)
  }

  /** A build of the demo engine from its first step, with a note beside each; it goes into the record like any other. */
  async beginGuided() {
    const words = this.#bench.words()
    const name = words.engines.sample.guided
    const person = this.#crew.name || words.engines.sample.mechanic
    const apprentice = this.#crew.find(person)?.role === 'apprentice'
    const { engine } = sampleFacts['half-way']
    const newBuild = { engine, name, serial: '', person, apprentice }
    const answer = await this.#client.request('builds.start', newBuild)
    if (!answer.ok) {
      this.#bench.report(answer.problem)
      if (answer.problem.code === 'person-not-proven') await this.#crew.named(person)
      return
    }
    // Before the build is shown, so that its note is there with it.
    await this.#guide.begin(answer.value.line.id)
    const problem = await this.#begin(answer.value, person)
    if (problem) this.#bench.report(problem)
  }

  /** Shows it with that person at the bench; null stays who is there. */
  async #begin(build: StoredBuild, person: string | null): Promise<Problem | null> {
    this.#bench.begun(build)
    if (person !== null) await this.#crew.takeBench(person)
    return this.#bench.show(build)
  }
}
