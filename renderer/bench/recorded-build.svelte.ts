import {
  evolve,
  replay,
  type BenchName,
  type BuildState,
  type RecordedEvent,
} from '../../core/builds/index.ts'
import type { Answer, Client, Input, LibraryLine, StoredBuild } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'

/** What every request that adds to a build begins with. */
type Base = Pick<Input<'photos.add'>, 'build' | 'after' | 'person' | 'language'>

/** What who shows the build hears. */
interface Listeners {
  /** Who is at the bench. */
  readonly person: () => string
  /** In which a refusal is to name things. */
  readonly language: () => Language
  /** An entry of this window is on disk, before it is taken in. */
  readonly recorded: () => void
  readonly refused: (problem: Problem) => void
  /** Entries of another window, before they are taken in. */
  readonly cameFromElsewhere: (news: readonly RecordedEvent[]) => void
  /** The number of the last entry, after each command of this window. */
  readonly confirmed: (seq: number) => void
  /** The build goes on by another revision: it has to be opened again. */
  readonly outdated: () => void
}

/** What the host has recorded of one build: asked for, added to, followed. Nothing stands here before it is on disk. */
export class RecordedBuild {
  readonly #client: Client
  readonly #build: string
  readonly #listeners: Listeners
  #events = $state.raw<readonly RecordedEvent[]>([])
  #state = $state.raw<BuildState>(replay([]))
  #benches = $state.raw<StoredBuild['benches']>()
  #newer = $state.raw<LibraryLine | null>(null)
  #saving = $state(false)
  #isFollowing = false
  #hasMissed = false

  constructor(client: Client, opened: StoredBuild, listeners: Listeners) {
    this.#client = client
    this.#build = opened.line.id
    this.#listeners = listeners
    this.#benches = opened.benches
    this.#newer = opened.newer ?? null
    this.#events = opened.events
    this.#state = startedAt(replay(opened.events), opened.benches?.begunAt ?? null)
  }

  get events() {
    return this.#events
  }
  get state() {
    return this.#state
  }
  get benches() {
    return this.#benches
  }
  get newer() {
    return this.#newer
  }
  get saving() {
    return this.#saving
  }

  /** True once what follows from the question is on disk and taken in. Ignored while another is being saved. */
  async add(ask: (base: Base) => Promise<Answer<'builds.act' | 'photos.add'>>): Promise<boolean> {
    if (this.#saving) return false
    this.#saving = true
    const [person, language] = [this.#listeners.person(), this.#listeners.language()]
    const answer = await ask({ build: this.#build, after: this.#state.seq, person, language })
    this.#saving = false
    const hasMissed = this.#hasMissed
    if (!answer.ok) {
      this.#listeners.refused(answer.problem)
      if (hasMissed || answer.problem.code === 'build-moved-on') await this.follow()
      return false
    }
    this.#listeners.recorded()
    this.#takeIn(answer.value.events)
    this.#listeners.confirmed(this.#state.seq)
    if (hasMissed) await this.follow()
    return true
  }

  /** Takes in what another window has confirmed. What the host refuses here it refuses at the next command too, and says why. */
  async follow(): Promise<void> {
    this.#hasMissed = this.#saving || this.#isFollowing
    if (this.#hasMissed) return
    this.#isFollowing = true
    const answer = await this.#client.request('builds.since', { build: this.#build, after: this.#state.seq })
    this.#isFollowing = false
    if (answer.ok) {
      if (answer.value.newer?.revision !== this.#newer?.revision) this.#newer = answer.value.newer ?? null
      this.#benches = answer.value.benches ?? this.#benches
      const news = answer.value.events.filter(({ seq }) => seq > this.#state.seq)
      this.#listeners.cameFromElsewhere(news)
      this.#takeIn(news)
    }
    if (this.#hasMissed && !this.#saving) await this.follow()
  }

  /** Both ways may bring the same entry: it counts once. */
  #takeIn(events: readonly RecordedEvent[]) {
    const others = events.filter(({ seq }) => seq > this.#state.seq)
    const other = others.findIndex(({ event }) => event.type === 'revision-taken-over')
    const news = other < 0 ? others : others.slice(0, other)
    if (other >= 0) this.#listeners.outdated()
    this.#events = [...this.#events, ...news]
    this.#state = news.reduce(evolve, this.#state)
  }
}

/** The state of a build that no entry says the bench of: it is the one that began it. */
function startedAt(state: BuildState, bench: BenchName | null): BuildState {
  return state.bench === null ? { ...state, bench } : state
}
