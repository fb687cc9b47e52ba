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

  it('is not believed of a build that is here, and does not stop it; nor does a line that follows itself', async () => {
    const shop = memoryShop()
    const turn: { to: 'as it is' | 'altered' } = { to: 'as it is' }
    const liar = altered(shop, (client) => ({
      forks: async (build?: string): Promise<Outcome<readonly Fork[]>> => {
        const own = await client.entries(build ?? '')
        if (turn.to === 'as it is' || !own.ok || own.value.length < 2) return client.forks(build)
        const second = own.value[1]!
        const itself = {
          ...second,
          body: second.body.replace(/"previous":"[0-9a-f]+"/, `"previous":"${second.sha256}"`),
        }
        return done([{ build: build ?? '', at: 2, sha256: second.sha256, entries: [itself], settled: null }])
      },
    }))
    const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(liar, 'Bench 2')]
    const { line } = await first.begin()
    await first.goesOn(line.id)
    await second.looksAt(line.id, 2)
    turn.to = 'altered'
    await second.ask('shop.open', { build: line.id })
    expect(hashesOf(second, line.id)).toEqual(hashesOf(first, line.id))
    const opened = await second.get('builds.open', { build: line.id })
    expect(opened.benches?.apart).toBeNull()
    expect((await second.get('shop.read', {})).joined?.refused).toMatchObject([
      { why: { code: 'shop-build-altered' } },
    ])
  })
})
