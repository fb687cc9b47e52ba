import type { Client } from '../../core/contract/index.ts'

/** What came from other benches; no builds where only the shop as a whole is another than it was. */
export type HearNews = (builds: readonly string[]) => void

/** What other benches of the shop confirm, as it comes. */
export class ShopNews {
  readonly #client: Client
  readonly #news: (build: string | null) => void
  readonly #listeners = new Set<() => void>()
  #following: AbortController | null = null

  /** `news` is called for each build of which something came here first, with null where the shop as a whole is another than it was. */
  constructor(client: Client, news: (build: string | null) => void) {
    this.#client = client
    this.#news = news
  }

  /** Until the bench leaves the shop; does nothing where that is so already. */
  async follow(): Promise<void> {
    if (this.#following !== null) return
    this.#following = new AbortController()
    const news = (builds: readonly string[]) => {
      for (const build of builds.length === 0 ? [null] : builds) this.#news(build)
    }
    await followShop(this.#client, news, this.#following.signal)
    this.#following = null
  }

  stop(): void {
    this.#following?.abort()
    this.#following = null
  }

  /** `listen` is called at each piece of news, whichever window heard it first, until what is returned is called. */
  hear(listen: () => void): () => void {
    this.#listeners.add(listen)
    return () => this.#listeners.delete(listen)
  }

  /** Something came: here, or at another window that announced it to this one. */
  came(): void {
    for (const listen of this.#listeners) listen()
  }
}

/**
 * Follows what comes from the shop, for all windows of this browser: one of them asks the host, the one that has the lock, and announces it to the
 * others. Ends by itself where the bench belongs to no shop; resolves then.
 */
export async function followShop(client: Client, hear: HearNews, signal: AbortSignal): Promise<void> {
  const lock = globalThis.navigator?.locks
  if (lock === undefined) return ask(client, hear, signal)
  await lock.request('shop-news', { signal }, () => ask(client, hear, signal)).catch(() => undefined)
}

async function ask(client: Client, hear: HearNews, signal: AbortSignal): Promise<void> {
  for (let after = 0; !signal.aborted;) {
    const answer = await client.request('shop.news', { after })
    if (!answer.ok || !answer.value.isJoined) return
    // The first answer says where it begins: what is said of the shop may be older than that, by the time it took to join.
    if (answer.value.number !== after) hear(after === 0 ? [] : answer.value.builds)
    after = answer.value.number
  }
}
