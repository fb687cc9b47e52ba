import { describe, expect, it } from 'vitest'
import { done, type Outcome } from '../../../../core/problem/index.ts'
import type { Fork, MemoryClient, MemoryShop, ShopEntry } from '../../../../electron/shop/index.ts'
import { sha256 } from '../../../../electron/store/index.ts'
import { benchOf, hashesOf, memoryShop, until } from './benches.ts'

/** The same shop, asked by a way on which answers are altered. */
const altered = (shop: MemoryShop, by: (client: MemoryClient) => Partial<MemoryClient>): MemoryShop => ({
  ...shop,
  client() {
    const client = shop.client()
    return { ...client, ...by(client) }
  },
})

type Entries = readonly ShopEntry[]
const entriesAs = (change: (entries: Entries) => Entries) => (client: MemoryClient) => ({
  entries: async (build: string, after?: number): Promise<Outcome<Entries>> => {
    const there = await client.entries(build, after)
    return there.ok ? done(change(there.value)) : there
  },
})
const other = (entry: ShopEntry): ShopEntry => {
  const body = entry.body.replace('Ana Ruiz', 'Somebody')
  return { ...entry, body, sha256: sha256(body) }
}

describe('an archive that says something else than a bench recorded', () => {
  it.each<[string, number, (entries: Entries) => Entries]>([
    [
      'an altered text',
      2,
      (all) => all.map((each) => (each.seq === 2 ? { ...each, body: other(each).body } : each)),
    ],
    ['an altered text with its hash', 3, (all) => all.map((each) => (each.seq === 2 ? other(each) : each))],
    ['one that is missing', 2, (all) => all.filter(({ seq }) => seq !== 2)],
    ['entries in another order', 1, (all) => all.toReversed()],
  ])('is not believed: %s', async (_, entry, change) => {
    const shop = memoryShop()
    const first = await benchOf(shop, 'Bench 1')
    const { line } = await first.begin()
    await first.goesOn(line.id, 2)
    await until(async () => (await first.get('shop.read', {})).joined?.waiting.entries === 0)
    const second = await benchOf(altered(shop, entriesAs(change)), 'Bench 2')
    await second.ask('shop.open', { build: line.id })
    expect(second.store.build(line.id)).toBeNull()
    expect((await second.get('shop.read', {})).joined?.refused).toMatchObject([
      { build: line.id, why: { code: 'shop-build-altered', facts: { entry } } },
    ])
    expect(second.bugs).toEqual([])
  })

  it('is not believed of a build that is here, which goes on as it is; entries that follow in a circle are no line', async () => {
    const shop = memoryShop()
    const is = { altered: false }
    const liar = altered(shop, (client) => ({
      forks: (build = '') => (is.altered ? Promise.resolve(done([circle(build)])) : client.forks(build)),
    }))
    const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(liar, 'Bench 2')]
    const { line } = await first.begin()
    const build = line.id
    await first.goesOn(build)
    await second.looksAt(build, 2)
    is.altered = true
    await second.ask('shop.open', { build })
    expect((await second.get('shop.read', {})).joined?.refused).toMatchObject([
      { build, why: { code: 'shop-build-altered' } },
    ])
    expect(hashesOf(second, build)).toEqual(hashesOf(first, build))
    expect((await second.get('builds.open', { build })).benches?.apart).toBeNull()
    is.altered = false
    await first.goesOn(build)
    await until(() => second.store.build(build)?.entries === 3)
    expect((await second.get('shop.read', {})).joined?.refused).toEqual([])
  })
})

/** Two entries that each say they follow the other, and one after them. */
function circle(build: string): Fork {
  const entry = (seq: number, letter: string, previous: string): ShopEntry => ({
    ...{ seq, sha256: letter.repeat(64), bench: '0123456789ab' },
    body: JSON.stringify({ build, seq, previous: previous.repeat(64) }),
  })
  const entries = [entry(2, 'a', 'b'), entry(3, 'b', 'a'), entry(4, 'c', 'b')]
  return { build, at: 2, sha256: 'a'.repeat(64), entries, settled: null }
}
