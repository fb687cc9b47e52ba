import { describe, expect, it } from 'vitest'
import type { WrittenWrench } from '../../../../core/contract/index.ts'
import { folder, store } from '../../bench.ts'
import { address, benchOf, benchOn, memoryShop, until, type TestBench } from './benches.ts'

const click: WrittenWrench = {
  id: 'click-100',
  name: 'Click 20–100',
  range: { least: '20 N·m', most: '100 N·m' },
  scale: { unit: 'N·m', step: 0.5 },
  length: '450 mm',
  adapters: [{ id: 'crowfoot', name: 'Crowfoot 17', offset: '40 mm', angle: '0 °' }],
  calibration: { on: '2026-03-31', cycles: 1200 },
}

const add = (bench: TestBench, name: string, more: { pin?: string; badge?: string } = {}) =>
  bench.get('people.keep', { id: null, name, role: 'mechanic', ...more, by: null })
const namesAt = async (bench: TestBench) => (await bench.get('people.list', {})).map(({ name }) => name)
const idAt = async (bench: TestBench, wanted: string) =>
  (await bench.get('people.list', {})).find(({ name }) => name === wanted)?.id ?? ''
const wrenchesAt = (bench: TestBench) => bench.get('wrenches.list', {})
const wrenchNamesAt = async (bench: TestBench) => (await wrenchesAt(bench)).map(({ name }) => name).toSorted()

async function twoBenches() {
  const shop = memoryShop()
  const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Bench 2')]
  return { shop, first, second }
}

const same = <Value>(one: Value, other: Value) => JSON.stringify(one) === JSON.stringify(other)

describe('people and wrenches of a shop', () => {
  it('are each bench’s own until the owner of the shop chooses otherwise, and again after that', async () => {
    const { shop, first, second } = await twoBenches()
    await add(first, 'Ana Ruiz')
    await add(second, 'I. Brandvold')
    expect((await first.get('shop.read', {})).joined?.commonLists).toEqual([])
    shop.makeCommon(['people'])
    for (const bench of [first, second])
      await until(async () => same(await namesAt(bench), ['Ana Ruiz', 'I. Brandvold']))
    expect((await second.get('shop.read', {})).joined?.commonLists).toEqual(['people'])
    await first.get('wrenches.keep', { wrench: click })

    shop.makeCommon([])
    await until(async () => (await second.get('shop.read', {})).joined?.commonLists.length === 0)
    await until(async () => (await first.get('shop.read', {})).joined?.commonLists.length === 0)
    await add(second, 'C. Halloran')
    expect(await namesAt(second)).toEqual(['Ana Ruiz', 'C. Halloran', 'I. Brandvold'])
    expect(await namesAt(first)).toEqual(['Ana Ruiz', 'I. Brandvold'])
    expect(await wrenchesAt(second)).toEqual([])
  })

  it('go from bench to bench with all that is known of them, and one who is removed is gone everywhere', async () => {
    const { shop, first, second } = await twoBenches()
    shop.makeCommon(['people', 'wrenches'])
    await add(first, 'Ana Ruiz', { pin: '2468', badge: 'A-17' })
    await first.get('wrenches.keep', { wrench: click })
    await until(async () => same(await wrenchesAt(second), [click]) && (await namesAt(second)).length === 1)
    const ana = await idAt(second, 'Ana Ruiz')
    expect(await second.ask('people.enter', { who: { badge: 'A-17' }, pin: '1111' })).toMatchObject({
      problem: { code: 'pin-wrong' },
    })
    expect((await second.get('people.enter', { who: { badge: 'A-17' }, pin: '2468' })).present).toBe(true)

    // Calibrated again at the second bench: the first works by that.
    const calibrated = { ...click, calibration: { on: '2026-11-01', cycles: 0 } }
    await second.get('wrenches.keep', { wrench: calibrated })
    await until(async () => same(await wrenchesAt(first), [calibrated]))
    // Another PIN given at the first bench has to be given at the second too.
    await first.get('people.keep', {
      ...{ id: ana, name: 'Ana Ruiz', role: 'mechanic', pin: '1357' },
      by: { person: ana, pin: '2468' },
    })
    await until(async () => (await second.get('people.list', {}))[0]?.present === false)

    await first.get('wrenches.remove', { id: click.id })
    await first.get('people.remove', { person: ana, by: { person: ana, pin: '1357' } })
    await until(async () => (await wrenchesAt(second)).length === 0 && (await namesAt(second)).length === 0)
    // Nothing of the person is left in the archive but that there was one.
    expect(await first.client().listItems('people')).toMatchObject({ value: [{ id: ana, json: null }] })
    expect([...first.bugs, ...second.bugs]).toEqual([])
  })

  it('are changed with the network down, and meet item by item: the last word on each holds', async () => {
    const { shop, first, second } = await twoBenches()
    shop.makeCommon(['people', 'wrenches'])
    for (const id of ['a', 'b', 'c']) await first.get('wrenches.keep', { wrench: { ...click, id, name: id } })
    await until(async () => (await wrenchesAt(second)).length === 3)
    first.client().cut()
    await first.get('wrenches.keep', { wrench: { ...click, id: 'a', name: 'a of the first' } })
    await first.get('wrenches.keep', { wrench: { ...click, id: 'd', name: 'd' } })
    await first.get('wrenches.remove', { id: 'c' })
    await new Promise((resolve) => setTimeout(resolve, 5)) // later by the clock
    await second.get('wrenches.keep', { wrench: { ...click, id: 'a', name: 'a of the second' } })
    await second.get('wrenches.keep', { wrench: { ...click, id: 'b', name: 'b of the second' } })
    await second.get('wrenches.keep', { wrench: { ...click, id: 'e', name: 'e' } })
    first.client().mend()
    const names = ['a of the second', 'b of the second', 'd', 'e']
    for (const bench of [first, second]) {
      await until(async () => same(await wrenchNamesAt(bench), names))
      expect(await wrenchNamesAt(bench)).toEqual(names)
    }
  })

  it('that were changed offline are reported after a new start too', async () => {
    const shop = memoryShop()
    shop.makeCommon(['people'])
    const inFolder = folder()
    const first = await benchOf(shop, 'Bench 1', inFolder)
    await until(async () => (await first.get('shop.read', {})).joined?.commonLists.length === 1)
    first.client().cut()
    await add(first, 'Ana Ruiz')
    await first.stop()
    first.store.close()
    const second = await benchOf(shop, 'Bench 2')
    const again = await benchOn(await store(inFolder), shop, 'Bench 1')
    await until(async () => same(await namesAt(second), ['Ana Ruiz']))
    expect(await namesAt(again)).toEqual(['Ana Ruiz'])
  })

  it('are not set back by a bench whose clock is a day behind, once it has seen what it changes', async () => {
    const { shop, first, second } = await twoBenches()
    shop.makeCommon(['wrenches'])
    await first.get('wrenches.keep', { wrench: click })
    await until(async () => (await wrenchesAt(second)).length === 1)
    const tomorrow = new Date(Date.now() + 86_400_000).toISOString()
    const renamed = JSON.stringify({ ...click, name: 'By a clock of tomorrow' })
    await second
      .client()
      .keepListItems('wrenches', [{ id: click.id, json: renamed, atUtc: tomorrow, bench: 'f'.repeat(12) }])
    await until(async () => (await wrenchesAt(second))[0]?.name === 'By a clock of tomorrow')
    await second.get('wrenches.keep', { wrench: { ...click, name: 'By one of today' } })
    await until(async () => (await wrenchesAt(first))[0]?.name === 'By one of today')
    expect(await wrenchNamesAt(second)).toEqual(['By one of today'])
  })

  it('of one name are one person: the one with a PIN stays, with what both practised', async () => {
    const { shop, first, second } = await twoBenches()
    await add(first, 'Ana Ruiz')
    await add(second, 'Ana  RUIZ', { pin: '2468' })
    const round = { engine: 'skerry-3', drill: 'order', at_utc: '2026-11-01T08:00:00Z', seconds: 9 }
    const practised = async (bench: TestBench, tally: string) =>
      bench.store.keepRound((await bench.get('people.list', {}))[0]?.id ?? '', {
        ...round,
        tally_json: tally,
      })
    await practised(first, '{"first":1}')
    shop.makeCommon(['people'])
    const kept = (await second.get('people.list', {}))[0]?.id
    await until(async () =>
      same(
        (await first.get('people.list', {})).map(({ id }) => id),
        [kept],
      ),
    )
    await until(async () => {
      const there = await second.client().listItems('people')
      return there.ok && there.value.length === 2 && there.value.filter(({ json }) => json).length === 1
    })
    expect((await second.get('people.list', {})).map(({ id }) => id)).toEqual([kept])
    expect(first.store.practised(kept ?? '').map(({ tally_json }) => tally_json)).toEqual(['{"first":1}'])
  })

  it('of a bench that comes again are the shop’s, with what it had beside', async () => {
    const { shop, first, second } = await twoBenches()
    shop.makeCommon(['wrenches'])
    for (const id of ['a', 'b']) await first.get('wrenches.keep', { wrench: { ...click, id, name: id } })
    await until(async () => (await wrenchesAt(second)).length === 2)
    await second.get('shop.leave', {})
    await second.get('wrenches.keep', { wrench: { ...click, id: 'c', name: 'c' } })
    await second.get('wrenches.keep', { wrench: { ...click, id: 'a', name: 'a while away' } })
    await first.get('wrenches.remove', { id: 'b' })
    await second.get('shop.join', { address, password: '', authority: '' })
    for (const bench of [first, second]) {
      await until(async () => same(await wrenchNamesAt(bench), ['a', 'c']))
      expect(await wrenchNamesAt(bench)).toEqual(['a', 'c'])
    }
  })

  it('that a newer program wrote are kept here as they came, and never taken for removed', async () => {
    const { shop, first, second } = await twoBenches()
    shop.makeCommon(['people', 'wrenches'])
    await until(async () => (await second.get('shop.read', {})).joined?.commonLists.length === 2)
    const atUtc = new Date().toISOString()
    const newer = { atUtc, bench: 'f'.repeat(12) }
    const beam = { id: 'beam', range: 'as a newer program writes it' }
    const robot = { id: '01956f6c-8a00-7000-8000-0000000000aa', name: 'Arm 7', role: 'robot' }
    await first.client().keepListItems('wrenches', [{ id: beam.id, json: JSON.stringify(beam), ...newer }])
    await first.client().keepListItems('people', [{ id: robot.id, json: JSON.stringify(robot), ...newer }])
    await until(() => second.store.lists.items('people').length === 1)
    await until(() => second.store.lists.items('wrenches').length === 1)
    await second.get('wrenches.keep', { wrench: click })
    await add(second, 'Ana Ruiz')
    await until(async () => (await namesAt(first)).length === 1 && (await wrenchesAt(first)).length === 1)
    const there = await first.client().listItems('people')
    expect(there.ok && there.value.find(({ id }) => id === robot.id)?.json).toBe(JSON.stringify(robot))
    expect(second.store.preferences()['wrenches']).toEqual([beam, click])
  })

  it('that were damaged on disk are made again, and nobody else’s are removed', async () => {
    const shop = memoryShop()
    shop.makeCommon(['wrenches'])
    const inFolder = folder()
    const first = await benchOf(shop, 'Bench 1', inFolder)
    await first.get('wrenches.keep', { wrench: click })
    await until(() => first.store.lists.items('wrenches')[0]?.sent)
    await first.stop()
    first.store.keepPreferences({ wrenches: 'no list' })
    first.store.close()
    const again = await benchOn(await store(inFolder), shop, 'Bench 1')
    expect(await wrenchesAt(again)).toEqual([click])
    await again.get('wrenches.keep', { wrench: { ...click, id: 'b' } })
    expect(await wrenchesAt(again)).toHaveLength(2)
  })
})
