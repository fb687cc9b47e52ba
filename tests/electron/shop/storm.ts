import { setTimeout as delay } from 'node:timers/promises'
import { describe, expect, it } from 'vitest'
import type { ShopArchive } from '../../../electron/shop/index.ts'
import { firstBroken } from '../../../electron/store/index.ts'
import { proxyTo } from './proxy.ts'
import { buildId, chainOf, consignment, ferryEngine, value } from './sample.ts'
import { destinationFor, type Shops } from './shops.ts'

interface Storm {
  readonly benches: number
  readonly seconds: number
  /** How many entries a bench confirms a second. */
  readonly rate: number
  readonly mostAnswerMs: number
}

const storm: Storm =
  process.env['BEDPLATE_RUNS'] === 'long'
    ? { benches: 50, seconds: 60, rate: 4, mostAnswerMs: 20_000 }
    : { benches: 5, seconds: 2, rate: 20, mostAnswerMs: 2000 }

/** What is acknowledged is there once, whatever ends in the midst of it. */
export function stormOn(shops: Shops): void {
  describe('benches that send while the server is killed, the network cut, and benches ended', () => {
    it(
      'lose nothing that was acknowledged, double nothing, and break no chain',
      async () => {
        const server = shops.server()
        const shop = await shops.newShop(1)
        const network = await proxyTo(server.port)
        const way = () =>
          shops.open(destinationFor(shop.role('bench'), { host: '127.0.0.1', port: network.port }), {
            mostAnswerMs: storm.mostAnswerMs,
            askEachMs: 1000,
          })
        value(await shop.client().keepSpec(ferryEngine))
        const told = new Map<string, number>()
        const wall = way()
        const stop = wall.follow(0, {
          added: ({ id, entries }) => told.set(id, entries),
          connection: () => {},
        })

        const until = Date.now() + storm.seconds * 1000
        const benches = Array.from({ length: storm.benches }, (_, index) =>
          bench(buildId('2026-11-02T08:00:01Z', index + 1), index, until, way),
        )
        let kills = 0
        let cuts = 0
        const troubles = (async () => {
          while (Date.now() < until) {
            await delay(storm.seconds * 150)
            network.cut()
            cuts += 1
            await delay(storm.seconds * 100)
            await server.kill()
            kills += 1
            await delay(100)
            await server.start()
          }
        })()
        const sent = await Promise.all(benches)
        await troubles

        const reader = shop.client('reader')
        for (const { build, acknowledged, chain } of sent) {
          expect(acknowledged).toBe(chain.length)
          const there = value(await reader.entries(build))
          expect(there.map(({ sha256 }) => sha256)).toEqual(chain.map(({ sha256 }) => sha256))
          expect(firstBroken(build, there)).toBeNull()
        }
        expect(value(await reader.forks())).toEqual([])
        await expect
          .poll(() => sent.every(({ build, chain }) => told.get(build) === chain.length), { timeout: 30_000 })
          .toBe(true)
        stop()
        network.close()
        expect(kills).toBeGreaterThan(0)
        expect(cuts).toBeGreaterThan(0)
        expect(sent.reduce((sum, { refusals }) => sum + refusals, 0)).toBeGreaterThan(0)
        if (storm.seconds > 10)
          console.log(
            JSON.stringify({
              benches: storm.benches,
              seconds: storm.seconds,
              kills,
              cuts,
              entries: sent.reduce((sum, { chain }) => sum + chain.length, 0),
              refusals: sent.reduce((sum, { refusals }) => sum + refusals, 0),
            }),
          )
      },
      storm.seconds * 1000 + 120_000,
    )
  })
}

/** A bench that confirms and sends in order until the time is over, then sends the rest; now and then it ends and begins again. */
async function bench(build: string, index: number, until: number, way: () => ShopArchive) {
  const chain = chainOf(build, Math.ceil(storm.seconds * storm.rate))
  const begun = Date.now()
  let archive = way()
  let acknowledged = 0
  let refusals = 0
  let failures = 0
  for (let turn = 1; acknowledged < chain.length; turn += 1) {
    const confirmed = Math.min(chain.length, Math.ceil(((Date.now() - begun) / 1000) * storm.rate))
    if (confirmed > acknowledged) {
      // Sometimes it knows less than the archive does, as after a kill between an answer and its being written down.
      const from = turn % 7 === 0 ? Math.max(0, acknowledged - 2) : acknowledged
      const sent = archive.send(consignment(build, chain.slice(from, confirmed)))
      if ((turn + index) % 11 === 0 && Date.now() < until) {
        void archive.close() // in the midst of it
        archive = way()
      }
      const answer = await sent
      if (!answer.ok) refusals += 1
      else if (answer.value.kind === 'kept') acknowledged = Math.max(acknowledged, answer.value.upTo)
      else if (answer.value.kind === 'behind') acknowledged = Math.min(acknowledged, answer.value.from - 1)
      else throw new Error('a fork of its own build')
      failures = answer.ok ? 0 : failures + 1
      // Longer each time, as the program waits: fifty that come again at once keep one another out.
      if (!answer.ok) await delay(20 + Math.random() * Math.min(3000, 50 * 2 ** failures))
    } else await delay(1000 / storm.rate / 2)
  }
  return { build, acknowledged, chain, refusals }
}
