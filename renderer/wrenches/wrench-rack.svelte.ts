import type { Answer, Client, WrittenWrench } from '../../core/contract/index.ts'
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
    return this.#took(await this.#client.request('wrenches.list', {}))
  }

  /** One wrench added, or in the place of the one with its id; why not, where it cannot be. */
  async keep(written: WrittenWrench): Promise<Problem | null> {
    return this.#took(await this.#client.request('wrenches.keep', { wrench: written }))
  }

  async remove(id: string): Promise<Problem | null> {
    return this.#took(await this.#client.request('wrenches.remove', { id }))
  }

  #took(answer: Answer<'wrenches.list'>): Problem | null {
    if (!answer.ok) return answer.problem
    this.#written = answer.value
    return null
  }
}
