import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { shopCommand } from '../../../electron/launch/shop-command.ts'
import { chooseLists, migrateShop, readAddress } from '../../../electron/shop/index.ts'
import {
  latestShopVersion,
  namesOf,
  shopMigrations,
} from '../../../electron/shop/postgres/migrations/index.ts'
import { sha256 } from '../../../electron/store/index.ts'
import { buildId, chainOf, consignment, ferryEngine, first, value } from './sample.ts'
import { runProgram } from './server.ts'
import { destinationFor, destinationOf, type Shops } from './shops.ts'
import { typedAddress } from './typed-address.ts'

async function shop(...args: readonly string[]) {
  const { exitCode: code, text: said } = await shopCommand(args, {})
  return { code, said }
}

/** `npm run shop`, and what PostgreSQL’s own tools make of an archive. */
export function settingUpOn(shops: Shops): void {
  describe('npm run shop', () => {
    it('makes an archive in one go, prints what each bench needs, and says what is in it', async () => {
      const server = shops.server()
      await server.createDatabase('works')
      const owner = server.address('works')
      const made = await shop('init', owner, '--benches', '2')
      expect(made.code).toBe(0)
      const logins = [...made.said.matchAll(/address +(\S+)\n +password +(\S+)/g)]
      expect(logins.map(([, address = '']) => new URL(address.replace('@/', '@x/')).username)).toEqual([
        'shop_reader_1',
        'shop_bench_1',
        'shop_bench_2',
      ])
      const [, address = '', password = ''] = logins[2] ?? []
      expect(value(readAddress(address)).password).toBeNull()
      const archive = shops.open({ ...destinationOf(address), password: () => password })
      value(await archive.greet({ id: first, name: 'Bench 2', program: '0.1.0' }))
      value(await archive.keepSpec(ferryEngine))
      const build = buildId('2026-11-02T08:00:01Z', 1)
      value(await archive.send(consignment(build, chainOf(build, 3))))

      const again = await shop('init', owner, '--benches', '2')
      expect(again.said).toMatch(/All logins are there already/)
      expect((await shop('migrate', owner)).said).toContain(`of version ${latestShopVersion} already`)
      const status = await shop('status', owner)
      expect(status.said).toMatch(
        /PostgreSQL \d+\.\d+, tables of version \d+\n {2}1 build, 3 entries, 0 photos\n {2}no fork is open\n/,
      )
      expect(status.said).toMatch(/Bench 2: last seen .*Z, Bedplate 0\.1\.0/)

      // The same name in another database would let these logins in there too.
      await server.createDatabase('others')
      const other = await shop('init', server.address('others'))
      expect(other).toMatchObject({
        code: 1,
        said: expect.stringMatching(/Another database .* shop called shop/) as string,
      })

      // Backup and restore by PostgreSQL's own tools: every guard and every right comes back with the rows.
      const file = join(server.folder, 'data', 'works.dump')
      const socket = ['-h', server.folder, '-p', String(server.port), '-U', 'owner']
      const tools = { PGPASSWORD: server.password }
      runProgram('pg_dump', tools, ...socket, '-Fc', '-f', file, 'works')
      await server.createDatabase('restored')
      runProgram('pg_restore', tools, ...socket, '--exit-on-error', '-d', 'restored', file)
      const there = shops.open({
        ...destinationOf(address.replace('/works', '/restored')),
        password: () => password,
      })
      expect(value(await there.entries(build))).toEqual(value(await archive.entries(build)))
      expect(value(await there.send(consignment(build, chainOf(build, 5))))).toEqual({
        kind: 'kept',
        upTo: 5,
      })
    })

    it('brings an archive of the first version to today’s, with all that is in it; until then benches say so', async () => {
      const { owner, role, asRole, client, name } = await shops.newShop()
      const sql = asRole('owner')
      await sql.unsafe(`DROP SCHEMA ${name} CASCADE; CREATE SCHEMA ${name};
        CREATE TABLE bedplate_version (version integer PRIMARY KEY, at timestamptz NOT NULL DEFAULT now());
        INSERT INTO bedplate_version VALUES (1)`)
      await sql.unsafe(shopMigrations[0]?.sql(namesOf(name)) ?? '')
      const archive = client()
      expect(await archive.builds()).toMatchObject({ problem: { code: 'shop-schema-older' } })
      expect(await chooseLists(owner, { people: 'one' })).toMatchObject({
        problem: { code: 'shop-schema-older', facts: { version: 1, known: latestShopVersion } },
      })
      await sql`INSERT INTO spec VALUES (decode(${sha256(ferryEngine.text)}, 'hex'), ${ferryEngine.text}, 'Ferry 4', true)`
      expect(value(await migrateShop(owner))).toEqual({ from: 1, to: latestShopVersion })
      const there = shops.open(destinationFor(role('bench')))
      expect(value(await there.spec(sha256(ferryEngine.text)))).toEqual(ferryEngine)
      expect(value(await there.commonLists())).toEqual([])
    })

    it('chooses whether people and wrenches are one list, which a bench may not', async () => {
      const { owner, role, client } = await shops.newShop()
      const archive = client()
      expect((await shop('lists', typedAddress(owner))).said).toMatch(
        /own list of people\n.*own list of wrenches/,
      )
      const chosen = await shop('lists', typedAddress(owner), '--people', 'one')
      expect(chosen.said).toMatch(/people are one list for all benches\n.*own list of wrenches/)
      expect(value(await archive.commonLists())).toEqual(['people'])
      await shop('lists', typedAddress(owner), '--people', 'own', '--wrenches', 'one')
      expect(value(await archive.commonLists())).toEqual(['wrenches'])
      expect(
        await shop('lists', typedAddress(destinationFor(role('bench'))), '--people', 'one'),
      ).toMatchObject({
        code: 1,
        said: expect.stringMatching(/does not allow/) as string,
      })
      expect((await shop('lists', typedAddress(owner), '--people', 'two')).code).toBe(2)
    })

    it('refuses in a sentence, and says how it is called', async () => {
      expect(await shop('init')).toMatchObject({
        code: 2,
        said: expect.stringMatching(/^npm run shop -- COMMAND/) as string,
      })
      const launcher = join(import.meta.dirname, '../../../electron/launch/shop.mjs')
      const address = shops.server().address('firm').replace('owner-secret', 's3cret-typo')
      const env = { ...process.env, LC_ALL: 'C' }
      const { status, stderr, stdout } = spawnSync(process.execPath, [launcher, 'status', address], {
        encoding: 'utf8',
        env,
      })
      expect(status).toBe(1)
      expect(stderr).toMatch(/does not take the password of owner/)
      expect(stderr + stdout).not.toContain('s3cret')
    })
  })
}
