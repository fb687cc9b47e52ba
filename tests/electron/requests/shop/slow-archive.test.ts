import { describe, expect, it } from 'vitest'
import type { MemoryClient, MemoryShop } from '../../../../electron/shop/index.ts'
import { benchOf, memoryShop, until } from './benches.ts'

/** The same shop, by a way on which questions may be answered only later. */
function slow(shop: MemoryShop) {
  let gate: Promise<void> = Promise.resolve()
  let open = () => {}
  const late =
    <Args extends readonly unknown[], Value>(question: (...args: Args) => Promise<Value>) =>
    async (...args: Args): Promise<Value> => {
      await gate
      return question(...args)
    }
  const way: MemoryShop = {
    ...shop,
    client(): MemoryClient {
      const client = shop.client()
      const { benches, build, entries, forks, send } = client
      return {
        ...client,
        ...{ benches: late(benches), build: late(build), entries: late(entries), forks: late(forks) },
        send: late(send),
      }
    },
  }
  return {
    way,
    slowDown() {
      gate = new Promise((resolve) => {
        open = resolve
      })
    },
    answer: () => open(),
  }
}

describe('a bench whose archive takes long to answer', () => {
  it('confirms, opens and shows what is known meanwhile, says what waits, and hears of the rest', async () => {
    const shop = memoryShop()
    const network = slow(shop)
    const first = await benchOf(shop, 'Bench 1')
    const second = await benchOf(network.way, 'Bench 2')
    const [{ line }, { line: own }] = [await first.begin(), await second.begin()]
    await second.looksAt(line.id, 1)
    await until(async () => (await second.get('shop.read', {})).joined?.waiting.entries === 0)

    network.slowDown()
    await second.goesOn(own.id, 2)
    const { joined } = await second.get('shop.read', {})
    expect(joined).toMatchObject({ connection: 'open', waiting: { entries: 2, builds: 1 } })
    expect(joined?.benches.map(({ name }) => name)).toEqual(['Bench 1', 'Bench 2'])
    expect((await second.get('shop.open', { build: line.id })).events).toHaveLength(1)

    const { number } = await second.get('shop.news', { after: 0 })
    network.answer()
    expect((await second.get('shop.news', { after: number })).number).toBeGreaterThan(number)
    await until(async () => (await second.get('shop.read', {})).joined?.waiting.entries === 0)
    expect(second.bugs).toEqual([])
  })
})
