import type { BuildLine, Client, EngineLine } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'

/** What the first page lists: engines to start from, and the builds that were started, as the host last said. */
export class StartLists {
  readonly #client: Client
  readonly #language: () => Language
  #engines = $state.raw<readonly EngineLine[]>([])
  #builds = $state.raw<readonly BuildLine[]>([])

  constructor(client: Client, language: () => Language) {
    this.#client = client
    this.#language = language
  }

  get engines() {
    return this.#engines
  }
  get builds() {
    return this.#builds
  }

  /** Reads both; why not, where the host says no, and then both stay as they were. */
  async load(): Promise<Problem | null> {
    const [engines, builds] = await Promise.all([
      this.#client.request('engines.list', { language: this.#language() }),
      this.#client.request('builds.list', { language: this.#language() }),
    ])
    if (!engines.ok) return engines.problem
    if (!builds.ok) return builds.problem
    this.#engines = engines.value
    this.#builds = builds.value
    return null
  }

  /** The builds as they are now; those that were shown stay where the host does not answer. */
  async loadBuilds() {
    const builds = await this.#client.request('builds.list', { language: this.#language() })
    if (builds.ok) this.#builds = builds.value
  }
}
