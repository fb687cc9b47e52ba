import type { Client } from '../../core/contract/index.ts'

/** What came from other benches; no builds where only the shop as a whole is another than it was. */
export type HearNews = (builds: readonly string[]) => void

/**
 * Follows what comes from the shop, for all windows of this browser: one of them asks the host, the one that has the lock, and tells the
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
    // The first answer tells where it begins: what is told of the shop may be older than that, by the time it took to join.
    if (answer.value.number !== after) hear(after === 0 ? [] : answer.value.builds)
    after = answer.value.number
  }
}
