import { vi } from 'vitest'
import { replay, type BuildCommand } from '../../../../core/builds/index.ts'
import { readSpec } from '../../../../core/engine/index.ts'
import { done } from '../../../../core/problem/index.ts'
import type { MemoryClient, MemoryShop } from '../../../../electron/shop/index.ts'
import type { Store } from '../../../../electron/store/index.ts'
import { folder, store } from '../../bench.ts'
import { nextCommand } from '../../mechanic.ts'
import { asking } from '../asking.ts'

export { memoryShop } from '../../../../electron/shop/index.ts'

export const address = 'postgres://bench@127.0.0.1/north'

/** A bench that has joined a shop in memory. */
export async function benchOf(shop: MemoryShop, name: string, inFolder = folder(), now = () => new Date()) {
  const kept = await store(inFolder)
  return benchOn(kept, shop, name, now)
}

let benches = 0

export async function benchOn(kept: Store, shop: MemoryShop, name: string, now = () => new Date()) {
  const clients: MemoryClient[] = []
  let drawn = 0
  benches += 1
  const ids = `01956f6c-8a00-7000-8${String(benches).padStart(3, '0')}`
  const asked = asking(kept, {
    now,
    newId: () => `${ids}-${String((drawn += 1)).padStart(12, '0')}`,
    shop: {
      openArchive: () => {
        const client = shop.client()
        clients.push(client)
        return done(client)
      },
      secret: {
        read: () => done(null),
        keep: () => undefined,
        forget: () => undefined,
        place: () => 'file',
      },
      machine: 'machine-7',
      random: () => 0,
    },
  })
  const { get, ask } = asked
  await get('shop.name-bench', { name })
  await get('shop.join', { address, password: '', authority: '' })

  /** Gives a command after whatever the build has here. */
  async function does(build: string, command: BuildCommand, person = 'Ana Ruiz') {
    const { events } = await get('builds.open', { build })
    return ask('builds.act', { build, after: events.length, person, command })
  }
  /** Looks at a build of the shop, by which it is followed here; waits until it has so many entries. */
  const looksAt = (build: string, entries: number) =>
    until(async () => (await ask('shop.open', { build })).ok && kept.build(build)?.entries === entries)
  /** Does the one thing that is next. */
  async function goesOn(build: string, times = 1): Promise<void> {
    for (let done = 0; done < times; done += 1) {
      const { specText, events } = await get('builds.open', { build })
      const read = readSpec(specText)
      if (!read.ok) throw new Error('the spec cannot be read')
      const command = nextCommand(read.spec, replay(events))
      const answer = command && (await does(build, command))
      if (answer?.ok === false) throw new Error(answer.problem.code)
    }
  }
  return {
    ...asked,
    store: kept,
    does,
    goesOn,
    looksAt,
    /** The way that is open now. */
    client: () => clients.at(-1)!,
    name: { id: kept.bench, name },
  }
}

export type TestBench = Awaited<ReturnType<typeof benchOf>>

/** Waits until what is asked for is so. */
export function until(isSo: () => unknown): Promise<void> {
  return vi.waitFor(
    async () => {
      if ((await isSo()) !== true) throw new Error('it is not so')
    },
    { timeout: 5000, interval: 5 },
  )
}

export const hashesOf = ({ store: kept }: TestBench, build: string) =>
  kept.entries(build).map(({ sha256 }) => sha256)
