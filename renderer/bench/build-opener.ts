import type { Client, Input, StoredBuild } from '../../core/contract/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import type { Crew } from '../people/crew.svelte.ts'
import type { OpenBuild } from './open-build.svelte.ts'
import { opening } from './opening.ts'
import type { OtherWindows } from './other-windows.ts'

/** What a person says when a build is to go on by a newer revision. */
export type RevisionAnswers = Omit<Input<'builds.take-revision'>, 'build' | 'after' | 'person'>

interface AtTheBench {
  readonly crew: Crew
  readonly others: OtherWindows
  readonly language: () => Language
  /** Hears of a build that goes on by another revision, in another window: what was opened of it is out of date. */
  readonly outdated: (build: string) => void
}

/** The ways to open a build of the record; each refused with the reason. */
export class BuildOpener {
  readonly #client: Client
  readonly #bench: AtTheBench

  constructor(client: Client, bench: AtTheBench) {
    this.#client = client
    this.#bench = bench
  }

  async read(build: string): Promise<Outcome<OpenBuild>> {
    const answer = await this.#client.request('builds.open', { build })
    return answer.ok ? this.open(answer.value) : answer
  }

  /** Like `read`, after the host has taken in what the archive has of it. */
  async readFromShop(build: string): Promise<Outcome<OpenBuild>> {
    const answer = await this.#client.request('shop.open', { build })
    return answer.ok ? this.open(answer.value) : answer
  }

  /** Another line of a build, to look at. */
  async readLine({ build, line }: Input<'shop.read-line'>): Promise<Outcome<OpenBuild>> {
    const answer = await this.#client.request('shop.read-line', { build, line })
    return answer.ok ? this.open(answer.value) : answer
  }

  async open(stored: StoredBuild): Promise<Outcome<OpenBuild>> {
    const { id: build } = stored.line
    const { crew, others, language, outdated } = this.#bench
    const { OpenBuild } = await opening.build()
    const confirmed = (seq: number) => others.announce({ build, seq })
    return OpenBuild.from(this.#client, stored, crew, confirmed, language, () => outdated(build))
  }

  /** Has the build go on by a newer revision, and opens it by that. */
  async takeRevision(openBuild: OpenBuild, answers: RevisionAnswers): Promise<Outcome<OpenBuild>> {
    const { id: build } = openBuild.line
    const base = { build, after: openBuild.state.seq, person: openBuild.person }
    const answer = await this.#client.request('builds.take-revision', { ...base, ...answers })
    if (!answer.ok) {
      if (answer.problem.code === 'build-moved-on') await openBuild.follow()
      return answer
    }
    this.#bench.others.announce({ build, seq: answer.value.events.at(-1)?.seq ?? 0 })
    return this.open(answer.value)
  }
}
