import { describe, expect, it } from 'vitest'
import type { MemoryClient, MemoryShop } from '../../../../electron/shop/index.ts'
import { benchOf, memoryShop, until } from './benches.ts'

/** The same shop, by a way on which questions may be answered only later. */
function slow(shop: MemoryShop) {
  let gate: Promise<void> = Promise.resolve()
  let open = () => {}
  const late = async <Value>(question: () => Promise<Value>): Promise<Value> => {
    await gate
    return question()
  }
  const way: MemoryShop = {
    ...shop,
    client(): MemoryClient {
      const client = shop.client()
      return {
        ...client,
        benches: (...asked) => late(() => client.benches(...asked)),
        build: (...asked) => late(() => client.build(...asked)),
        entries: (...asked) => late(() => client.entries(...asked)),
        forks: (...asked) => late(() => client.forks(...asked)),
        send: (...asked) => late(() => client.send(...asked)),
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
