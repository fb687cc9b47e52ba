import { describe, expect, it } from 'vitest'
import type { ShopConnection } from '../../../../electron/shop/index.ts'
import { chainOf, consignment, first, value } from '../sample.ts'
import { build, later, withSpec, type OpenShop } from './shop-with-spec.ts'

/** A machine under load is slow, not wrong. */
const soon = { timeout: 20_000 }

/** What who follows the archive is told. */
export function followingContract(of: string, openShop: OpenShop): void {
  describe(`following an archive ${of}`, () => {
    it('begins with what came past a change, and goes on with each addition', async () => {
      const [archive, client] = await withSpec(openShop)
      value(await archive.send(consignment(build, chainOf(build, 1))))
      const change = value(await archive.build(build))?.change ?? 0
      value(await archive.send(consignment(later, chainOf(later, 1))))
      const elsewhere = await client()
      const told: [string, number][] = []
      const connections: ShopConnection['kind'][] = []
      const stop = elsewhere.follow(change, {
        added: ({ id, entries }) => told.push([id, entries]),
        connection: ({ kind }) => connections.push(kind),
      })
      await expect.poll(() => told, soon).toEqual([[later, 1]])
      expect(connections.at(-1)).toBe('open')
      value(await archive.send(consignment(build, chainOf(build, 3))))
      await expect
        .poll(() => told, soon)
        .toEqual([
          [later, 1],
          [build, 3],
        ])
      stop()
      value(await archive.send(consignment(build, chainOf(build, 4))))
      await elsewhere.builds()
      expect(told).toHaveLength(2)
    })

    it('begins with now where the archive has gone back behind what was seen', async () => {
      const [archive, client] = await withSpec(openShop)
      value(await archive.send(consignment(build, chainOf(build, 1))))
      const told: string[] = []
      const stop = (await client()).follow(1_000_000, {
        added: ({ id }) => told.push(id),
        skipped: (why) => told.push(why),
        connection: () => {},
      })
      await expect.poll(() => told, soon).toEqual(['set-back'])
      expect(value(await archive.lastChange())).toBe(value(await archive.build(build))?.change)
      expect(value(await archive.buildsOf([later, build])).map(({ id }) => id)).toEqual([build])
      value(await archive.send(consignment(later, chainOf(later, 1))))
      await expect.poll(() => told, soon).toEqual(['set-back', later])
      stop()
    })

    it('tells that something was said of a list', async () => {
      const [archive, client] = await withSpec(openShop)
      let told = 0
      const connections: ShopConnection['kind'][] = []
      const stop = (await client()).follow(0, {
        added: () => {},
        lists: () => (told += 1),
        connection: ({ kind }) => connections.push(kind),
      })
      await expect.poll(() => connections, soon).toContain('open')
      const item = { id: 'ana', json: '{}', bench: first }
      // The line on which it is told may open a moment later.
      await expect
        .poll(async () => {
          value(await archive.keepListItems('people', [{ ...item, atUtc: new Date().toISOString() }]))
          return told > 0
        }, soon)
        .toBe(true)
      stop()
    })

    it('tells changes in their order', async () => {
      const [archive] = await withSpec(openShop)
      value(await archive.send(consignment(build, chainOf(build, 1))))
      value(await archive.send(consignment(later, chainOf(later, 1))))
      value(await archive.send(consignment(build, chainOf(build, 2))))
      const changes = value(await archive.changesAfter(0))
      expect(changes.map(({ id, entries }) => [id, entries])).toEqual([
        [later, 1],
        [build, 2],
      ])
      expect(value(await archive.changesAfter(changes.at(-1)?.change ?? 0))).toEqual([])
    })
  })
}
