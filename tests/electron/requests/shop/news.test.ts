import { describe, expect, it } from 'vitest'
import { benchOf, memoryShop } from './benches.ts'

describe('a window that waits for news', () => {
  it('hears of the builds that changed', async () => {
    const shop = memoryShop()
    const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Bench 2')]
    const before = await second.get('shop.news', { after: 1_000_000 })
    const { line } = await first.begin()
    let heard: readonly string[] = []
    for (let { number } = before; !heard.includes(line.id);) {
      const news = await second.get('shop.news', { after: number })
      number = news.number
      heard = news.builds
    }
    expect(heard).toContain(line.id)
  })

  it('is answered at once at a bench that belongs to no shop', async () => {
    const bench = await benchOf(memoryShop(), 'Bench 1')
    await bench.get('shop.leave', {})
    expect(await bench.get('shop.news', { after: 0 })).toEqual({ isJoined: false, number: 0, builds: [] })
  })
})
