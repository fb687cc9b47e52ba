import { describe, expect, it } from 'vitest'
import { replay } from '../../../core/builds/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { done } from '../../../core/problem/index.ts'
import { shopCommand } from '../../../electron/launch/shop-command.ts'
import { seal } from '../../../electron/store/chain/chain.ts'
import { folder, store } from '../bench.ts'
import { nextCommand } from '../mechanic.ts'
import { asking } from '../requests/asking.ts'
import { buildId, chainOf, consignment, ferryEngine, second, value } from './sample.ts'
import { destinationFor, type NewShop, type Shops } from './shops.ts'
import { typedAddress } from './typed-address.ts'

/** A real bench at the shop, and two builds that it sent: one in the midst of its work, one voided. */
async function atWork(shop: NewShop) {
  const kept = await store(folder())
  const bench = asking(kept, {
    shop: {
      openArchive: () => done(shop.client()),
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
  await bench.get('shop.join', { address: 'postgres://bench@127.0.0.1/north', password: '', authority: '' })
  const [going, voided] = [await bench.begin(), await bench.begin()]
  for (let after = 1; after <= 12;) {
    const { specText, events } = await bench.get('builds.open', { build: going.line.id })
    const read = readSpec(specText)
    const command = read.ok ? nextCommand(read.spec, replay(events)) : null
    if (!command) throw new Error('nothing is next')
    await bench.act(going.line.id, events.length, command)
    after = events.length + 1
  }
  await bench.act(voided.line.id, 1, { type: 'void-build', reason: 'Wrong engine' })
  const archive = shop.client('reader')
  await expect
    .poll(async () => value(await archive.builds()).reduce((sum, { entries }) => sum + entries, 0), {
      timeout: 30_000,
    })
    .toBe(kept.entries(going.line.id).length + 2)
  return { archive, going: going.line.id }
}

/** `npm run shop -- rebuild`. */
export function rebuildingOn(shops: Shops): void {
  describe('npm run shop -- rebuild', () => {
    it('makes the list and the words of all builds again from the entries, as the benches had made them', async () => {
      const shop = await shops.newShop()
      const { archive, going } = await atWork(shop)
      const sql = shop.asRole('owner')
      const listed = async () => ({
        builds: value(await archive.builds()).map(({ change: _, receivedAtUtc: __, ...row }) => row),
        words: await sql<{ word: string }[]>`SELECT * FROM mention ORDER BY build, kind, word`,
      })
      const before = await listed()
      const rebuild = () => shopCommand(['rebuild', typedAddress(shop.owner)], {})
      expect((await rebuild()).text).toMatch(/of 2 builds\.\n {2}it was as the entries say/)
      expect(await listed()).toEqual(before)

      await sql.unsafe(`
        UPDATE build SET name = 'Another', serial = '', finished = true, voided = NOT voided, flagged = NOT flagged, holder = 'ffffffffffff',
          standing = '{}', entries = 1, head_sha256 = sha256('x'), bench = '', last_at = now(), started_at = now(), year = 1999
          WHERE id = '${going}';
        DELETE FROM mention WHERE kind = 'serial';
        INSERT INTO mention SELECT 'another', 'name', id FROM build;
        SET session_replication_role = 'replica'; DELETE FROM build WHERE id <> '${going}'`)
      expect((await listed()).builds).not.toEqual(before.builds)
      expect(await rebuild()).toMatchObject({
        exitCode: 0,
        text: expect.stringMatching(/of 2 builds\.\n {2}2 builds were listed otherwise/) as string,
      })
      const after = await listed()
      // Its number is the bench’s that began it and stands in no entry: a build that lost its place gets the next one.
      const numbered = before.builds.map((row) => ({
        ...row,
        ordinal: after.builds.find(({ id }) => id === row.id)?.ordinal,
      }))
      expect(after.builds).toEqual(numbered)
      const withoutNumbers = (words: typeof before.words) =>
        words.filter((row) => !('kind' in row && row.kind === 'number'))
      expect(withoutNumbers(after.words)).toEqual(withoutNumbers(before.words))
      expect(value(await archive.builds({ words: ['201'], kind: 'serial' }))).toHaveLength(2)
      expect((await rebuild()).text).toMatch(/as the entries say/)
    })

    it('lists a build by the line that counts, where another one came first', async () => {
      const shop = await shops.newShop()
      const { archive, going } = await atWork(shop)
      const entries = value(await archive.entries(going))
      const [before, last] = entries.slice(-2)
      if (before === undefined || last === undefined) throw new Error('two entries')
      const at = '2026-11-02T09:00:00.000Z'
      const said = { build: going, at, person: 'Ana Ruiz' } as const
      const voided = seal({
        ...{ ...said, seq: last.seq, previous: before.sha256 },
        event: { type: 'build-voided', version: 1, reason: 'Wrong engine' },
      })
      const settled = seal({
        ...{ ...said, seq: last.seq + 1, previous: voided.sha256 },
        event: {
          ...{ type: 'fork-settled', version: 1, bench: { id: second, name: 'Bench 2' } },
          ...{ entry: last.seq, over: last.sha256, reason: 'This was done' },
        },
      })
      const row = value(await archive.build(going))
      if (row === null) throw new Error('it is there')
      value(
        await shop.client().send({
          ...{ build: going, bench: second, entries: [voided, settled], mentions: [], counts: 'here' },
          listed: { ...row, voided: true, lastAtUtc: at, standing: null },
        }),
      )
      const rebuild = async () => (await shopCommand(['rebuild', typedAddress(shop.owner)], {})).text
      expect(await rebuild()).toMatch(/as the entries say/)
      await shop.asRole('owner')`UPDATE build SET voided = false WHERE id = ${going}`
      expect(await rebuild()).toMatch(/1 build was listed otherwise/)
      expect(value(await archive.build(going))).toMatchObject({ voided: true, entries: last.seq })
    })

    it('leaves what it cannot read as it is listed, and forks open', async () => {
      const shop = await shops.newShop()
      const archive = shop.client()
      value(await archive.keepSpec(ferryEngine))
      const build = buildId('2026-11-02T08:00:01Z', 1)
      value(await archive.send(consignment(build, chainOf(build, 3))))
      value(await archive.send({ ...consignment(build, chainOf(build, 3, 1, 'other')), bench: second }))
      const before = value(await archive.builds())
      expect(before).toMatchObject([{ forked: true }])
      expect((await shopCommand(['rebuild', typedAddress(shop.owner)], {})).text).toMatch(
        /1 build left as listed/,
      )
      expect(value(await archive.builds())).toEqual(before)
    })

    it('is its owner’s alone', async () => {
      const shop = await shops.anyShop()
      const bench = typedAddress(destinationFor(shop.role('reader')))
      expect(await shopCommand(['rebuild', bench], {})).toMatchObject({
        exitCode: 1,
        text: expect.stringMatching(/does not allow/) as string,
      })
    })
  })
}
