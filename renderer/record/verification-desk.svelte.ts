import type { Answer, Client, Verification } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'

const askEveryMs = 500

/** Follows a verification as the host gets on with it. */
export class VerificationDesk {
  readonly #client: Client
  #state = $state.raw<Verification>({ state: 'none' })
  #problem = $state.raw<Problem | null>(null)
  #clock: ReturnType<typeof setTimeout> | undefined

  constructor(client: Client) {
    this.#client = client
  }

  get state() {
    return this.#state
  }
  get problem() {
    return this.#problem
  }

  /** Of one build, or of the whole archive for null. */
  async start(build: string | null) {
    this.#take(await this.#client.request('verification.start', { build }))
  }

  /** What there is to see of one that was started before. */
  async read() {
    this.#take(await this.#client.request('verification.read', {}))
  }

  async stop() {
    this.#take(await this.#client.request('verification.stop', {}))
  }

  /** Makes the lists again from the entries, and verifies once more. */
  async rebuildLists(build: string | null) {
    const made = await this.#client.request('record.rebuild-lists', {})
    if (made.ok) return this.start(build)
    this.#problem = made.problem
  }

  /** Asks no more; the host goes on. */
  leave() {
    clearTimeout(this.#clock)
  }

  #take(answer: Answer<'verification.read'>) {
    this.leave()
    this.#problem = answer.ok ? null : answer.problem
    if (!answer.ok) return
    this.#state = answer.value
    if (answer.value.state === 'running') this.#clock = setTimeout(() => void this.read(), askEveryMs)
  }
}
