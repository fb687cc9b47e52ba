import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { setTimeout as delay } from 'node:timers/promises'
import type { Answer } from '../../core/contract/index.ts'
import { done } from '../../core/problem/index.ts'
import type { ShopArchive } from '../../electron/shop/index.ts'
import { openStore, recordName } from '../../electron/store/index.ts'
import { answersOn, countedIds } from '../electron/answers.ts'
import { value } from '../electron/shop/sample.ts'
import { noServer } from '../electron/shop/server.ts'
import type { Measure } from './measure.ts'
import { emptyArchive } from './shop/archive.ts'
import { fill } from './shop-search.bench.ts'

/** `BEDPLATE_SHOP_BUILDS=1000000 npm run bench -- shop-join` takes some minutes to fill. */
const builds = Number(process.env['BEDPLATE_SHOP_BUILDS'] ?? 20_000)

/** The archive, with a count of the questions that are asked of it and of the rows that it answers or tells. */
function counted(archive: ShopArchive) {
  const count = { questions: 0, rows: 0 }
  const counting = new Proxy(archive, {
    get(target, name: keyof ShopArchive) {
      const method = target[name]
      if (name === 'follow')
        return ((after, listener) =>
          target.follow(after, {
            ...listener,
            added: (build) => {
              count.rows += 1
              listener.added(build)
            },
          })) satisfies ShopArchive['follow']
      if (typeof method !== 'function' || name === 'connection' || name === 'close') return method
      return async (...args: readonly unknown[]) => {
        count.questions += 1
        const answer = await (
          method as (...args: readonly unknown[]) => Promise<{ ok: boolean; value?: unknown }>
        )(...args)
        if (Array.isArray(answer.value)) count.rows += answer.value.length
        return answer
      }
    },
  })
  return { archive: counting, count }
}

/** A new bench joins, and lists the first page of what is there. */
async function joined(archive: ShopArchive) {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-join-'))
  const { archive: counting, count } = counted(archive)
  const now = () => new Date()
  const store = value(await openStore(folder, now))
  const { answer, stop } = answersOn(store, {
    ...{ now, newId: countedIds() },
    shop: {
      openArchive: () => done(counting),
      secret: { read: () => done(null), keep: () => undefined, forget: () => undefined, place: () => 'file' },
      machine: 'machine-7',
      random: () => 0,
    },
  })
  try {
    globalThis.gc?.()
    const heap = process.memoryUsage().heapUsed
    const begun = performance.now()
    await answer('shop.join', { address: 'postgres://bench@127.0.0.1/shop', password: '', authority: '' })
    const state = async () => value((await answer('shop.read', {})) as Answer<'shop.read'>).joined
    while ((await state())?.connection !== 'open') await delay(1)
    const openMs = performance.now() - begun
    await answer('builds.find', { of: 'shop', words: '', language: 'en' })
    const listedMs = performance.now() - begun
    await delay(3000) // whatever goes on behind it
    globalThis.gc?.()
    return {
      openMs,
      listedMs,
      ...count,
      buildsInRecord: store.countBuilds(),
      recordKB: Math.round(statSync(join(folder, recordName)).size / 1000),
      heapMB: (process.memoryUsage().heapUsed - heap) / 1e6,
    }
  } finally {
    await stop()
    store.close()
    rmSync(folder, { recursive: true })
  }
}

/** What a first page and the little that is asked behind it come to, whatever the archive holds. */
const mostRows = 200

export const measures: readonly Measure[] = [
  {
    name: 'shop-join',
    bar: `a bench that joins pulls at most ${mostRows} rows and takes no build into its record, whatever the archive holds`,
    async take() {
      const why = noServer()
      if (why !== null) {
        console.error(`Skipped: ${why}`)
        return { values: {} }
      }
      const { server, archive, close } = await emptyArchive()
      try {
        await fill(server, builds)
        const found = await joined(archive)
        return {
          values: { builds, ...found },
          holds: found.rows <= mostRows && found.buildsInRecord === 0,
        }
      } finally {
        await close()
      }
    },
  },
]
