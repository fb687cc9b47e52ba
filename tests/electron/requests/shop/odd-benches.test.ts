import { describe, expect, it } from 'vitest'
import type { BuildEvent } from '../../../../core/builds/index.ts'
import { firstBroken } from '../../../../electron/store/index.ts'
import { seal } from '../../../../electron/store/chain/chain.ts'
import { folder } from '../../bench.ts'
import { consignment } from '../../shop/sample.ts'
import { benchOf, hashesOf, memoryShop, until } from './benches.ts'

const dayMs = 86_400_000

describe('a bench whose clock is a day off', () => {
  it.each([
    ['behind', -dayMs],
    ['ahead', dayMs],
  ])(
    'and %s goes on with a build and gives it back: nothing is lost, doubled or refused',
    async (_, skewMs) => {
      const shop = memoryShop()
      const [first, second] = [
        await benchOf(shop, 'Bench 1'),
        await benchOf(shop, 'Bench 2', folder(), () => new Date(Date.now() + skewMs)),
      ]
      const { line } = await first.begin()
      const build = line.id
      await first.goesOn(build)
      await second.looksAt(build, 2)
      await until(async () => (await first.get('shop.read', {})).joined?.benches.length === 2)
      await first.does(build, { type: 'hand-over', to: second.name, note: '' })
      await until(() => second.store.build(build)?.entries === 3)
      await second.goesOn(build, 2)
      expect((await second.does(build, { type: 'hand-over', to: first.name, note: '' })).ok).toBe(true)
      await until(() => first.store.build(build)?.entries === 6)
      await first.goesOn(build)
      await until(() => second.store.build(build)?.entries === 7)
      expect(hashesOf(second, build)).toEqual(hashesOf(first, build))
      expect(firstBroken(build, second.store.entries(build))).toBeNull()
      expect((await second.get('shop.read', {})).joined).toMatchObject({ refused: [], apart: [] })
      const { lines } = await first.get('builds.find', { of: 'shop', words: '' })
      expect(lines).toMatchObject([{ id: build, entries: 7, at: { bench: first.name, isForked: false } }])
    },
  )
})

describe('a bench with an older program', () => {
  it('keeps what it does not know as it came, shows what came before, and goes on with its own builds', async () => {
    const shop = memoryShop()
    const old = await benchOf(shop, 'Bench 1')
    const { line } = await old.begin()
    const build = line.id
    await until(async () => (await old.get('shop.read', {})).joined?.waiting.entries === 0)
    const event = { type: 'thread-cleaned', version: 1, with: { tool: 'brush' } } as unknown as BuildEvent
    const known: BuildEvent = { type: 'build-voided', version: 1, reason: 'Wrong engine' }
    const chain = [...old.store.entries(build)]
    for (const each of [event, known]) {
      const { seq, sha256: previous } = chain.at(-1)!
      const at = '2026-11-02T08:00:00.000Z'
      chain.push(seal({ build, seq: seq + 1, at, person: 'I. Lind', event: each, previous }))
    }
    const newer = shop.client()
    const specSha256 = old.store.build(build)!.spec_sha256
    expect(await newer.send(consignment(build, chain.slice(1), { specSha256 }))).toMatchObject({ ok: true })

    await until(() => old.store.build(build)?.entries === 3)
    expect(hashesOf(old, build)).toEqual(chain.map(({ sha256 }) => sha256))
    expect(await old.get('builds.open', { build })).toMatchObject({
      events: { length: 1 },
      readOnly: { code: 'build-newer', facts: { entry: 2 } },
    })
    const other = await old.begin()
    await old.goesOn(other.line.id, 2)
    await until(async () => {
      const sent = await newer.entries(other.line.id)
      return sent.ok && sent.value.length === 3
    })
    expect(old.bugs).toEqual([])
  })
})
