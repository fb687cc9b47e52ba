import { describe, expect, it } from 'vitest'
import { memoryShop, type ShopConnection } from '../../../electron/shop/index.ts'
import { archiveContract } from './contract/archive.ts'
import { buildId, chainOf, consignment, ferryEngine, value } from './sample.ts'

archiveContract('in memory', () => {
  const shop = memoryShop()
  return Promise.resolve(() => Promise.resolve(shop.client()))
})

describe('an archive in memory that is cut off', () => {
  it('answers nothing, and tells what came meanwhile once it is mended', async () => {
    const shop = memoryShop()
    const [here, there] = [shop.client(), shop.client()]
    const build = buildId('2026-11-02T08:00:01Z', 1)
    const told: number[] = []
    const connections: ShopConnection['kind'][] = []
    there.follow(0, {
      added: ({ entries }) => told.push(entries),
      connection: ({ kind }) => connections.push(kind),
    })
    there.cut()
    value(await here.keepSpec(ferryEngine))
    value(await here.send(consignment(build, chainOf(build, 1))))
    value(await here.send(consignment(build, chainOf(build, 2))))
    expect(await there.builds()).toMatchObject({ ok: false, problem: { code: 'shop-unreachable' } })
    expect(told).toEqual([])
    there.mend()
    await expect.poll(() => told).toEqual([2])
    expect(connections).toEqual(['cut', 'cut', 'open'])
  })
})
