import type {
  BuildLine,
  Client,
  EngineLine,
  OpenBuild,
  Preferences,
  ToldProblem,
} from '../../core/contract.ts'
import { BuildSession } from './build-session.svelte.ts'

/** Where the person is. The build and its sheet carry the session they show. */
export type Place =
  | { readonly at: 'opening' }
  | { readonly at: 'engines' }
  | { readonly at: 'build'; readonly session: BuildSession }
  | { readonly at: 'sheet'; readonly session: BuildSession }

/** The whole window's state: a snapshot of what the host last said, and where the person is. */
export class Bench {
  readonly #client: Client
  #place = $state.raw<Place>({ at: 'opening' })
  #engines = $state.raw<readonly EngineLine[]>([])
  #builds = $state.raw<readonly BuildLine[]>([])
  #preferences = $state.raw<Preferences | null>(null)
  #problem = $state.raw<ToldProblem | null>(null)

  constructor(client: Client) {
    this.#client = client
  }

  get place() {
    return this.#place
  }
  get engines() {
    return this.#engines
  }
  get builds() {
    return this.#builds
  }
  get preferences() {
    return this.#preferences
  }
  /** What went wrong last, until the next thing that goes well. */
  get problem() {
    return this.#problem
  }

  /** First sight of the window: back to the build that lay open, else the engines. */
  async open() {
    const preferences = await this.#client.request('preferences.read', {})
    if (!preferences.ok) return this.#tell(preferences.problem)
    this.#preferences = preferences.value
    if (preferences.value.atBuild && (await this.openBuild(preferences.value.atBuild))) return
    await this.showEngines()
  }

  async showEngines() {
    const [engines, builds] = await Promise.all([
      this.#client.request('engines.list', {}),
      this.#client.request('builds.list', {}),
    ])
    if (!engines.ok) return this.#tell(engines.problem)
    if (!builds.ok) return this.#tell(builds.problem)
    this.#engines = engines.value
    this.#builds = builds.value
    this.#place = { at: 'engines' }
    if (this.#preferences?.atBuild) await this.keep({ atBuild: null })
  }

  async startBuild(
    engine: string,
    name: string,
    serial: string,
    person: string,
  ): Promise<ToldProblem | null> {
    const answer = await this.#client.request('builds.start', { engine, name, serial, person })
    if (!answer.ok) return answer.problem
    await this.keep({ person: person.trim() })
    await this.#enter(answer.value)
    return null
  }

  /** False when the build cannot be opened; the reason is in `problem`. */
  async openBuild(build: string): Promise<boolean> {
    const answer = await this.#client.request('builds.open', { build })
    if (!answer.ok) {
      this.#tell(answer.problem)
      return false
    }
    return this.#enter(answer.value)
  }

  showSheet(session: BuildSession) {
    this.#place = { at: 'sheet', session }
  }

  showBuild(session: BuildSession) {
    this.#place = { at: 'build', session }
  }

  /** Tells the host that this window is still there; a host whose windows have all gone ends itself. */
  async sayHere() {
    const answer = await this.#client.request('host.read', {})
    if (!answer.ok) this.#tell(answer.problem)
  }

  async keep(change: Partial<Preferences>) {
    const answer = await this.#client.request('preferences.keep', change)
    if (!answer.ok) return this.#tell(answer.problem)
    this.#preferences = answer.value
  }

  async #enter(opened: OpenBuild): Promise<boolean> {
    const session = BuildSession.from(this.#client, opened, () => this.#preferences?.person ?? '')
    if ('sentence' in session) {
      this.#tell(session)
      return false
    }
    this.#problem = null
    this.#place = { at: 'build', session }
    await this.keep({ atBuild: opened.line.id })
    return true
  }

  #tell(problem: ToldProblem) {
    this.#problem = problem
  }
}
