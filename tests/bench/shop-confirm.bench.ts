import { createServer } from 'node:net'
import { setTimeout as delay } from 'node:timers/promises'
import { performance } from 'node:perf_hooks'
import { noServer } from '../electron/shop/server.ts'
import type { Measure } from './measure.ts'
import { emptyArchive } from './shop/archive.ts'
import { typedAddress, withBench } from './shop/bench.ts'
import { Worker } from './worker.ts'

const rounds = 300
/** What a bench sends it has sent before another one confirms. A person takes longer. */
const betweenMs = 25
const most = 1.05

function median(times: readonly number[]): number {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0
}

/** A server that takes every line and never says anything. */
async function withSilence<Result>(work: (port: number) => Promise<Result>): Promise<Result> {
  const server = createServer(() => {})
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const at = server.address()
  try {
    return await work(typeof at === 'object' && at !== null ? at.port : 0)
  } finally {
    server.close()
  }
}

/** Each confirms once a round, and each comes first by turns. */
async function byTurns(workers: readonly Worker[]): Promise<readonly (readonly number[])[]> {
  const times = workers.map((): number[] => [])
  for (let round = 0; round < rounds; round += 1)
    for (let turn = 0; turn < workers.length; turn += 1) {
      const which = (round + turn) % workers.length
      const worker = workers[which]!
      const { build, pull } = await worker.untilPull()
      await delay(betweenMs)
      const start = performance.now()
      await worker.act(build, pull)
      times[which]?.push(performance.now() - start)
    }
  return times
}

export const measures: readonly Measure[] = [
  {
    name: 'shop-confirm',
    bar: `a confirmation takes at most ${most} times as long at a bench of a shop, also where its archive never answers`,
    async take() {
      const why = noServer()
      if (why !== null) {
        console.error(`Skipped: ${why}`)
        return { values: {} }
      }
      const { roles, archive, close } = await emptyArchive()
      const [{ address, password }] = roles as [(typeof roles)[number]]
      try {
        return await withSilence((port) =>
          withBench(null, (alone) =>
            withBench(typedAddress(address, password), (joined) =>
              withBench(typedAddress({ ...address, host: '127.0.0.1', port }, password), async (unheard) => {
                const workers = [alone, joined, unheard].map((answer) => new Worker(answer))
                const [aloneMs = 0, joinedMs = 0, unheardMs = 0] = (await byTurns(workers)).map(median)
                await delay(1000)
                const builds = await archive.builds()
                const sent = builds.ok ? builds.value.reduce((sum, { entries }) => sum + entries, 0) : 0
                const ratio = joinedMs / aloneMs
                const unheardRatio = unheardMs / aloneMs
                return {
                  values: { aloneMs, joinedMs, unheardMs, ratio, unheardRatio, rounds, sent },
                  // What was confirmed in the shop has come there; else nothing was compared.
                  holds: ratio <= most && unheardRatio <= most && sent > rounds,
                }
              }),
            ),
          ),
        )
      } finally {
        await close()
      }
    },
  },
]
