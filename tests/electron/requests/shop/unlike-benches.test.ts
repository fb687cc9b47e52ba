import { expect, it } from 'vitest'
import { seal } from '../../../../electron/store/chain/chain.ts'
import { firstBroken } from '../../../../electron/store/index.ts'
import { folder, store, value } from '../../bench.ts'
import { benchOf, benchOn, hashesOf, memoryShop, until } from './benches.ts'

const dayMs = 86_400_000

it('two benches whose clocks are a day apart work on one build: its entries go by their numbers', async () => {
  const shop = memoryShop()
  const first = await benchOf(shop, 'Bench 1')
  const behind = await benchOn(await store(folder()), shop, 'Bench 2', () => new Date(Date.now() - dayMs))
  const { line } = await first.begin()
  await first.goesOn(line.id, 3)
  await until(async () => (await first.get('shop.read', {})).joined?.benches.length === 2)
  await first.does(line.id, { type: 'hand-over', to: behind.name, note: '' })
  await behind.looksAt(line.id, 5)
  await behind.goesOn(line.id, 2)
  await until(() => first.store.build(line.id)?.entries === 7)
  expect(hashesOf(first, line.id)).toEqual(hashesOf(behind, line.id))
  expect(firstBroken(line.id, first.store.entries(line.id))).toBeNull()
  const { events } = await first.get('builds.open', { build: line.id })
  const [handed, next] = events.slice(-3)
  expect(Date.parse(handed?.at ?? '') - Date.parse(next?.at ?? '')).toBeGreaterThan(dayMs / 2)
  expect((await behind.get('shop.read', {})).joined).toMatchObject({ apart: [], refused: [] })
  expect([...first.bugs, ...behind.bugs]).toEqual([])
})

it('a bench with an older program keeps what a newer one recorded, shows it up to there, and adds nothing', async () => {
  const shop = memoryShop()
  const [first, newer] = [await benchOf(shop, 'Bench 1'), shop.client()]
  const { line } = await first.begin()
  await until(async () => (await first.get('shop.read', {})).joined?.waiting.entries === 0)
  const row = value(await newer.build(line.id))
  if (row === null) throw new Error('it was not sent')
  const future = seal({
    build: line.id,
    seq: 2,
    at: '2027-01-02T08:00:00.000Z',
    person: 'Ana Ruiz',
    // @ts-expect-error -- no program of today knows it
    event: { type: 'weighed', version: 1, grams: 412 },
    previous: row.headSha256,
  })
  value(
    await newer.send({
      build: line.id,
      bench: 'c'.repeat(12),
      entries: [future],
      listed: row,
      mentions: [],
      counts: null,
    }),
  )
  await until(() => first.store.build(line.id)?.entries === 2)
  expect(first.store.entries(line.id)[1]?.body).toBe(future.body)
  const opened = await first.get('builds.open', { build: line.id })
  expect(opened).toMatchObject({ readOnly: { code: 'build-newer', facts: { entry: 2 } } })
  expect(opened.events).toHaveLength(1)
  const asked = await first.ask('builds.act', {
    ...{ build: line.id, after: 2, person: 'Ana Ruiz' },
    command: { type: 'void-build', reason: 'Wrong engine' },
  })
  expect(asked).toMatchObject({ ok: false, problem: { code: 'build-newer' } })
  expect((await first.get('shop.read', {})).joined).toMatchObject({ apart: [], refused: [] })
  expect(first.bugs).toEqual([])
})
