import { describe, expect, it, onTestFinished } from 'vitest'
import { sentenceOf, type Outcome } from '../../../core/problem/index.ts'
import { readAuthority, type ShopArchive } from '../../../electron/shop/index.ts'
import { latestShopVersion } from '../../../electron/shop/postgres/migrations/index.ts'
import { transaction } from '../../../electron/shop/postgres/transaction.ts'
import { dial } from '../../../electron/shop/postgres/dial.ts'
import { migrateShop, setUp } from '../../../electron/shop/postgres/set-up.ts'
import { proxyTo } from './proxy.ts'
import { serving, speakAs } from './stand-in-server.ts'
import { value } from './sample.ts'
import { database, destinationFor, destinationOf, type Shops } from './shops.ts'

/** What may be wrong on the way to an archive, each with its own code. */
export function connectingTo(shops: Shops): void {
  const problemIn = (outcome: Outcome<unknown>) => (outcome.ok ? null : outcome.problem)
  const asked = async (archive: ShopArchive) => problemIn(await archive.builds())

  describe('a way to the archive', () => {
    it.each([
      ['shop-unreachable', { host: '127.0.0.1', port: 1 }],
      ['shop-unreachable', { host: '/nowhere' }],
      ['shop-host-unknown', { host: 'nowhere.invalid' }],
      ['shop-database-missing', { database: 'nothing' }],
      ['shop-password-wrong', { user: 'nobody_here' }],
      ['shop-not-set-up', { shop: 'south' }],
    ] as const)('that leads nowhere: %s %o', async (code, by) => {
      const shop = await shops.anyShop()
      const archive = shops.open(destinationFor(shop.role('bench'), by))
      const problem = await asked(archive)
      expect(problem?.code).toBe(code)
      expect(archive.connection()).toMatchObject({ kind: 'cut', problem: { code } })
    })

    it('with a wrong password, or none: neither is in what is said of it', async () => {
      const { address } = (await shops.anyShop()).role('bench')
      for (const [password, code] of [
        ['pass-w0rd', 'shop-password-wrong'],
        [null, 'shop-password-missing'],
      ] as const) {
        const archive = shops.open({ address, authority: null, password: () => password })
        const problem = await asked(archive)
        expect(problem?.code).toBe(code)
        const said = JSON.stringify([
          problem,
          archive.connection(),
          problem === null ? '' : sentenceOf(problem),
        ])
        expect(said).not.toContain('pass-w0rd')
      }
    })

    it('that is lost in the midst of a transaction: what was begun is given up, and nothing is written to it', async () => {
      const shop = await shops.anyShop()
      const thrown: unknown[] = []
      const hear = (error: unknown) => void thrown.push(error)
      process.prependListener('uncaughtException', hear)
      onTestFinished(() => void process.off('uncaughtException', hear))
      const network = await proxyTo(shops.server().port)
      onTestFinished(() => network.close())
      const line = dial(destinationFor(shop.role('bench'), { host: '127.0.0.1', port: network.port }), {
        connections: 1,
      })
      onTestFinished(() => line.end({ timeout: 0 }))
      const lost = transaction(line, async (inside) => {
        setTimeout(() => network.close(), 100)
        return Promise.all([1, 2, 3].map((seconds) => inside`SELECT pg_sleep(${seconds})`))
      })
      await expect(lost).rejects.toThrow()
      await new Promise((resolve) => setTimeout(resolve, 50))
      expect(thrown).toEqual([])
    })

    it('opens again by itself once what was wrong is put right', async () => {
      const shop = await shops.anyShop()
      let password = 'not yet'
      const archive = shops.open({
        address: shop.role('bench').address,
        authority: null,
        password: () => password,
      })
      expect((await asked(archive))?.code).toBe('shop-password-wrong')
      password = shop.role('bench').password
      expect(await asked(archive)).toBeNull()
      expect(archive.connection().kind).toBe('open')
    })

    it('to a database that is another program’s, which is left as it is', async () => {
      const shop = await shops.anyShop()
      const owner = shop.asRole('owner')
      await owner.unsafe(
        'CREATE SCHEMA stock; CREATE TABLE stock.part (a int); GRANT USAGE ON SCHEMA stock TO PUBLIC',
      )
      const destination = destinationOf(`${shops.server().address(database)}&shop=stock`)
      expect((await asked(shops.open(destination)))?.code).toBe('shop-database-foreign')
      expect(problemIn(await setUp(destination, 1))?.code).toBe('shop-database-foreign')
      expect(
        await owner`SELECT relname FROM pg_class WHERE relnamespace = 'stock'::regnamespace`,
      ).toHaveLength(1)
    })

    it('to tables of a newer program, which is reported and changes nothing', async () => {
      const shop = await shops.newShop()
      const owner = shop.asRole('owner')
      await owner`INSERT INTO bedplate_version (version) VALUES (99)`
      expect(await asked(shop.client())).toMatchObject({
        code: 'shop-schema-newer',
        facts: { version: 99, known: latestShopVersion },
      })
      expect(problemIn(await setUp(shop.owner, 2))?.code).toBe('shop-schema-newer')
      expect(problemIn(await migrateShop(shop.owner))?.code).toBe('shop-schema-newer')
      await owner`DELETE FROM bedplate_version`
      expect(await asked(shop.client())).toMatchObject({ code: 'shop-schema-older', facts: { version: 0 } })
    })

    it('to a server that sends a row of a gigabyte: the line is cut, and nothing waits', async () => {
      const bytes = Buffer.from([0x44, 0x40, 0, 0, 0])
      const port = await serving((socket) => socket.on('data', () => socket.write(bytes)))
      const shop = await shops.anyShop()
      const archive = shops.open(destinationFor(shop.role('bench'), { host: '127.0.0.1', port }))
      expect((await asked(archive))?.code).toBe('shop-answer-unreadable')
      expect(archive.connection().kind).toBe('cut')
    })

    it('that goes to sleep in the midst of a consignment keeps nobody else from sending for long', async () => {
      const shop = await shops.anyShop()
      const line = dial(destinationFor(shop.role('bench')), { connections: 1 })
      onTestFinished(() => line.end({ timeout: 0 }))
      const [set] = await line<{ idle: string; locked: string }[]>`
        SELECT current_setting('idle_in_transaction_session_timeout') AS idle, current_setting('lock_timeout') AS locked`
      expect(set).toEqual({ idle: '15s', locked: '10s' })
    })

    it('to a server of version 11', async () => {
      const port = await serving((socket) => speakAs(socket, '11.22 (Debian 11.22-0)'))
      const shop = await shops.anyShop()
      const problem = await asked(shops.open(destinationFor(shop.role('bench'), { host: '127.0.0.1', port })))
      expect(problem).toMatchObject({ code: 'shop-server-old', facts: { version: '11.22', least: 14 } })
    })
  })

  describe('TLS', () => {
    it('is asked for where the server is on another machine, and nothing is sent without it', async () => {
      const heard: Buffer[] = []
      const port = await serving((socket) => {
        socket.on('data', (bytes) => {
          heard.push(bytes)
          socket.write('N')
        })
      })
      const shop = await shops.anyShop()
      const { address, password } = shop.role('bench')
      // An authority is named, so that this machine is trusted no more than another.
      const archive = shops.open({
        address: { ...address, host: '127.0.0.1', port, authority: 'ca.pem' },
        authority: null,
        password: () => password,
      })
      expect((await asked(archive))?.code).toBe('shop-tls-missing')
      expect(Buffer.concat(heard).toString('hex')).toMatch(/^(0000000804d2162f)+$/)
    })

    it('is trusted where the named authority issued the certificate for the name, and nowhere else', async () => {
      const server = shops.server()
      const shop = await shops.anyShop()
      const ask = async (host: string, authority: string | null) => {
        const role = destinationFor(shop.role('bench'), {
          host,
          port: server.port,
          authority: authority ?? 'none',
        })
        const certificates = authority === null ? null : value(readAuthority(authority))
        return asked(shops.open({ ...role, authority: certificates }))
      }
      expect(await ask('localhost', server.authority)).toBeNull()
      expect(await ask('127.0.0.1', server.authority)).toMatchObject({
        code: 'shop-certificate',
        facts: { fault: 'other-name' },
      })
      expect(await ask('localhost', server.otherAuthority)).toMatchObject({
        code: 'shop-certificate',
        facts: { fault: 'untrusted' },
      })
      expect(await ask('localhost', null)).toMatchObject({
        code: 'shop-certificate',
        facts: { fault: 'untrusted' },
      })
      expect(problemIn(readAuthority('/nowhere/ca.pem'))?.code).toBe('shop-authority-unreadable')
    })
  })
}
