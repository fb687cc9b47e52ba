import { describe, expect, it } from 'vitest'
import { buildId, chainOf, consignment, ferryEngine, value } from '../../shop/sample.ts'
import { folder, store } from '../../bench.ts'
import { benchOf, benchOn, memoryShop, until, type TestBench } from './benches.ts'

/** More than is told one by one to who comes again. */
const many = 1500

async function fullShop() {
  const shop = memoryShop()
  const archive = shop.client()
  value(await archive.keepSpec(ferryEngine))
  await add(archive, 1, many)
  return { shop, archive }
}

async function add(archive: ReturnType<TestBench['client']>, from: number, to: number) {
  for (let n = from; n <= to; n += 1) {
    const id = buildId(`2026-11-02T08:${String(n % 60).padStart(2, '0')}:00Z`, n)
    value(await archive.send(consignment(id, chainOf(id, 1))))
  }
}

describe('a bench that joins a shop with very many builds', () => {
  it('takes none of them in, and lists them page by page', async () => {
    const { shop, archive } = await fullShop()
    const bench = await benchOf(shop, 'Bench 1')
    await until(async () => (await bench.get('shop.read', {})).joined?.connection === 'open')
    const page = await bench.get('builds.find', { of: 'shop', words: '' })
    expect(page).toMatchObject({ more: true })
    expect(page.lines).toHaveLength(50)
    await add(archive, many + 1, many + 3)
    await until(async () => (await bench.get('shop.news', { after: 0 })).number > 4)
    expect(bench.store.countBuilds()).toBe(0)
    expect(bench.bugs).toEqual([])
  })

  it('names their engines and steps in the language of its window, though it has none of their specs', async () => {
    const shop = memoryShop()
    const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Office')]
    const { line } = await first.begin()
    await first.goesOn(line.id, 2)
    const listed = async (bench: typeof first, of: 'shop' | 'here') =>
      (await bench.get('builds.find', { of, words: '', language: 'de' })).lines[0]
    await until(async () => (await listed(second, 'shop'))?.standing?.step?.place === 3)
    const there = await listed(second, 'shop')
    expect(second.store.specHashes()).not.toContain(first.store.build(line.id)?.spec_sha256)
    const own = await listed(first, 'here')
    expect([there?.engine, there?.standing?.step]).toEqual([own?.engine, own?.standing?.step])
    expect(own?.standing?.step?.name).not.toBe(
      (await first.get('builds.find', { of: 'here', words: '', language: 'en' })).lines[0]?.standing?.step
        ?.name,
    )
  })

  it('follows what it works on, what it looked at, and what is handed to it', async () => {
    const { shop } = await fullShop()
    const [bench, other] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Bench 2')]
    const looked = await other.begin()
    const handed = await other.begin()
    const left = await other.begin()
    await bench.looksAt(looked.line.id, 1)
    await other.goesOn(looked.line.id)
    await other.goesOn(left.line.id)
    await until(async () => (await other.get('shop.read', {})).joined?.benches.length === 2)
    const given = await other.does(handed.line.id, { type: 'hand-over', to: bench.name, note: '' })
    expect(given.ok).toBe(true)
    await until(() => bench.store.build(looked.line.id)?.entries === 2)
    await until(() => bench.store.build(handed.line.id)?.entries === 2)
    expect(bench.store.build(left.line.id)).toBeNull()
  })

  it('that was away while very much was added finds what became of its own', async () => {
    const { shop, archive } = await fullShop()
    const inFolder = folder()
    const before = await benchOf(shop, 'Bench 1', inFolder)
    const other = await benchOf(shop, 'Bench 2')
    const { line } = await other.begin()
    const handed = await other.begin()
    await before.looksAt(line.id, 1)
    await before.stop()
    before.store.close()
    await other.goesOn(line.id, 2)
    expect((await other.does(handed.line.id, { type: 'hand-over', to: before.name, note: '' })).ok).toBe(true)
    await add(archive, many + 1, 2 * many)
    const bench = await benchOn(await store(inFolder), shop, 'Bench 1')
    await until(() => bench.store.build(line.id)?.entries === 3)
    await until(() => bench.store.build(handed.line.id)?.entries === 2)
    expect(bench.store.countBuilds()).toBe(2)
  })
})
