import { expect, it } from 'vitest'
import { listedByEntries, specsOf } from '../../../../electron/shop/listed-by-entries.ts'
import { value } from '../../bench.ts'
import { benchOf, memoryShop, until } from './benches.ts'

it('what a bench says of a build to the list of the shop is what its entries say', async () => {
  const shop = memoryShop()
  const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Bench 2')]
  const [going, voided] = [await first.begin(), await first.begin()]
  await first.goesOn(going.line.id, 12)
  await first.does(voided.line.id, { type: 'void-build', reason: 'Wrong engine' })
  await until(async () => (await first.get('shop.read', {})).joined?.benches.length === 2)
  await first.does(going.line.id, { type: 'hand-over', to: second.name, note: '' })
  await until(async () => (await first.get('shop.read', {})).joined?.waiting.entries === 0)
  const archive = second.client()
  for (const row of value(await archive.builds())) {
    const entries = value(await archive.entries(row.id))
    const texts = new Map<string, string>()
    for (const hash of specsOf(entries)) texts.set(hash, value(await archive.spec(hash))?.text ?? '')
    const made = listedByEntries(row.id, entries, (hash) => texts.get(hash) ?? null)
    expect(row).toMatchObject(made?.listed ?? { listed: 'nothing' })
    const words = [...new Set(made?.words(row.ordinal).map(({ word }) => word))]
    for (const word of words)
      expect(value(await archive.builds({ words: [word] })).map(({ id }) => id)).toContain(row.id)
    expect(words).toContain('201')
  }
  expect(value(await archive.builds({ holder: second.name.id }))).toHaveLength(1)
})

it('nothing is said of entries whose spec is not to be had', async () => {
  const shop = memoryShop()
  const bench = await benchOf(shop, 'Bench 1')
  const { line } = await bench.begin()
  await until(async () => (await bench.get('shop.read', {})).joined?.waiting.entries === 0)
  const entries = value(await bench.client().entries(line.id))
  expect(listedByEntries(line.id, entries, () => null)).toBeNull()
  expect(listedByEntries(line.id, entries.slice(1), () => null)).toBeNull()
})
