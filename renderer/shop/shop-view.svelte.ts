import type { Answer, Client, FoundLine, Input, ShopCut, ShopState } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'

/** What is looked for among the builds of the shop; what is absent does not narrow it. */
export type ShopQuery = Pick<Input<'builds.find'>, 'words' | 'state'>

/** The shop as the host last described it, and a page of the builds of its benches. */
export class ShopView {
  readonly #client: Client
  readonly #language: () => Language
  #state = $state.raw<ShopState | null>(null)
  #problem = $state.raw<Problem | null>(null)
  #busy = $state(false)
  #wanted = $state.raw<ShopQuery>({ words: '' })
  #lines = $state.raw<readonly FoundLine[] | null>(null)
  #hasMore = $state(false)
  #notFound = $state.raw<Problem | null>(null)
  #cut = $state.raw<ShopCut>(null)
  #asked = 0

  constructor(client: Client, language: () => Language) {
    this.#client = client
    this.#language = language
  }

  /** Null until the first answer. */
  get state() {
    return this.#state
  }
  /** What went wrong with what a person asked for last. */
  get problem() {
    return this.#problem
  }
  get busy() {
    return this.#busy
  }
  get wanted() {
    return this.#wanted
  }
  get lines() {
    return this.#lines
  }
  get hasMore() {
    return this.#hasMore
  }
  /** Why what is listed is only what this bench has; null where it is all. */
  get cut() {
    return this.#cut
  }
  /** Why nothing can be listed. */
  get notFound() {
    return this.#notFound
  }

  async read(): Promise<void> {
    const answer = await this.#client.request('shop.read', {})
    if (answer.ok) this.#state = answer.value
    else this.#problem = answer.problem
  }

  nameBench(name: string): Promise<boolean> {
    return this.#ask(this.#client.request('shop.name-bench', { name }))
  }
  join(how: Input<'shop.join'>): Promise<boolean> {
    return this.#ask(this.#client.request('shop.join', how))
  }
  leave(): Promise<boolean> {
    return this.#ask(this.#client.request('shop.leave', {}))
  }

  /** Searches with what has changed, or as before: something may have come. */
  async look(change: Partial<ShopQuery> = {}): Promise<void> {
    this.#wanted = { ...this.#wanted, ...change }
    const request = ++this.#asked
    const answer = await this.#find()
    if (request !== this.#asked) return
    this.#notFound = answer.ok ? null : answer.problem
    if (!answer.ok) return
    this.#cut = answer.value.shop?.cut ?? null
    this.#lines = answer.value.lines
    this.#hasMore = answer.value.more
  }

  async older(): Promise<void> {
    const before = this.#lines?.at(-1)?.id
    const answer = await this.#find(before)
    this.#notFound = answer.ok ? null : answer.problem
    if (!answer.ok) return
    this.#lines = [...(this.#lines ?? []), ...answer.value.lines]
    this.#hasMore = answer.value.more
  }

  #find(before?: string): Promise<Answer<'builds.find'>> {
    const asked = { ...this.#wanted, of: 'shop', before, language: this.#language() } as const
    return this.#client.request('builds.find', asked)
  }

  async #ask(asked: Promise<Answer<'shop.read'>>): Promise<boolean> {
    this.#busy = true
    const answer = await asked
    this.#busy = false
    this.#problem = answer.ok ? null : answer.problem
    if (answer.ok) this.#state = answer.value
    return answer.ok
  }
}
