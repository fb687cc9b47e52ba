import type { Client, WrittenWrench } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import { wrench, type WrenchSetup, type Wrench } from '../../core/tightening/index.ts'

/** The shop's wrenches as the host keeps them. */
export class WrenchRack {
  readonly #client: Client
  #written = $state.raw<readonly WrittenWrench[]>([])

  readonly wrenches: readonly Wrench[] = $derived.by(() =>
    this.#written.flatMap((each) => {
      const read = wrench.safeParse(each)
      return read.success ? [read.data] : []
    }),
  )
  /** Each wrench bare, and with each of its adapters. */
  readonly setups: readonly WrenchSetup[] = $derived.by(() =>
    this.wrenches.flatMap((each) => [null, ...each.adapters].map((adapter) => ({ wrench: each, adapter }))),
  )

  constructor(client: Client) {
    this.#client = client
  }

  get written() {
    return this.#written
  }

  async load(): Promise<Problem | null> {
    const answer = await this.#client.request('wrenches.list', {})
    if (!answer.ok) return answer.problem
    this.#written = answer.value
    return null
  }

  /** One wrench added, or in the place of the one with its id; why not, where it cannot be. */
  keep(written: WrittenWrench): Promise<Problem | null> {
    const known = this.#written.some(({ id }) => id === written.id)
    return this.#keepAll(
      known
        ? this.#written.map((each) => (each.id === written.id ? written : each))
        : [...this.#written, written],
    )
  }

  remove(id: string): Promise<Problem | null> {
    return this.#keepAll(this.#written.filter((each) => each.id !== id))
  }

  async #keepAll(wrenches: readonly WrittenWrench[]): Promise<Problem | null> {
    const answer = await this.#client.request('wrenches.keep', { wrenches: [...wrenches] })
    if (!answer.ok) return answer.problem
    this.#written = answer.value
    return null
  }
}
