import { describe, expect, it } from 'vitest'
import { seal } from '../../../electron/store/chain/chain.ts'
import { sha256, type StoredEntry } from '../../../electron/store/index.ts'
import { buildId, chainOf, consignment, ferryEngine, first, value } from './sample.ts'
import type { NewShop, Shops } from './shops.ts'

const build = buildId('2026-11-02T08:00:01Z', 1)
const notAllowed = '42501' // insufficient_privilege
const checkFailed = '23514' // check_violation

async function codeOf(statement: Promise<unknown>): Promise<string> {
  try {
    await statement
    return 'done'
  } catch (error) {
    return error instanceof Error && 'code' in error ? String(error.code) : String(error)
  }
}

/** What the database itself keeps people from, whatever program they come with. */
export function guardsOf(shops: Shops): void {
  let made: Promise<NewShop> | undefined
  const withBuild = () =>
    (made ??= (async () => {
      const shop = await shops.newShop()
      const archive = shop.client()
      value(await archive.keepSpec(ferryEngine))
      value(await archive.keepPhoto(Uint8Array.from([1, 2, 3])))
      value(await archive.send(consignment(build, chainOf(build, 3))))
      const ana = { id: 'ana', json: '{}', atUtc: '2026-11-02T08:00:00.000Z', bench: first }
      value(await archive.keepListItems('people', [ana]))
      return shop
    })())

  describe('a role of a bench', () => {
    it.each([
      "UPDATE entry SET body = 'other'",
      'DELETE FROM entry',
      'TRUNCATE entry',
      'TRUNCATE entry_2026_11',
      "UPDATE entry_2026_11 SET body = 'other'",
      'SELECT * FROM entry_2026_11 FOR UPDATE',
      "UPDATE spec SET engine = 'other'",
      'DELETE FROM photo',
      'DELETE FROM build',
      'UPDATE build SET entries = 0',
      'UPDATE build SET id = gen_random_uuid()',
      'DELETE FROM mention',
      'DELETE FROM fork_entry',
      'UPDATE counter SET change = 0',
      'DELETE FROM list_item',
      "UPDATE list_item SET list = 'wrenches'",
      'UPDATE list SET common = true',
      'SELECT lists_are_told()',
      'ALTER TABLE entry DISABLE TRIGGER ALL',
      'DROP TABLE entry',
      'CREATE TABLE mine (a int)',
      'SELECT note_change(gen_random_uuid())',
      'INSERT INTO bedplate_version (version) VALUES (9)',
      "SET session_replication_role = 'replica'",
      'SELECT announce(NULL::uuid) FROM counter',
      'SELECT first_id(now()::timestamp)',
      'SELECT rolpassword FROM pg_authid',
      'SET ROLE owner',
      'ALTER ROLE CURRENT_USER CREATEROLE',
      'ALTER FUNCTION announce OWNER TO CURRENT_USER',
      'CREATE TABLE public.mine (a int)',
      'CREATE SCHEMA mine',
      'BEGIN; LOCK TABLE entry IN ACCESS EXCLUSIVE MODE',
      'BEGIN; LOCK TABLE build IN EXCLUSIVE MODE',
      'SELECT change FROM counter FOR UPDATE',
      "COPY entry TO PROGRAM 'cat'",
      "SELECT pg_read_file('/etc/passwd')",
      'ALTER TABLE bench DISABLE ROW LEVEL SECURITY',
    ])('may not: %s', async (statement) => {
      const bench = (await withBuild()).asRole('bench')
      expect(await codeOf(bench.unsafe(statement))).toBe(notAllowed)
      await bench.end()
    })

    it('sees what no other role asks, and shadows no table by one of its own', async () => {
      const shop = await shops.anyShop()
      const archive = shop.client()
      const build = buildId('2026-11-02T08:00:01Z', 8)
      const entries = chainOf(build, 2)
      value(await archive.keepSpec(ferryEngine))
      value(await archive.send(consignment(build, entries.slice(0, 1))))
      const [bench, owner] = [shop.asRole('bench'), shop.asRole('owner')]
      await owner`SELECT 'said by the owner'`
      const others = await bench<
        { query: string }[]
      >`SELECT query FROM pg_stat_activity WHERE usename = 'owner'`
      expect(others.filter(({ query }) => query.includes('said by'))).toEqual([])
      // The triggers that carry out what the owner may look there last.
      await bench.unsafe(
        'CREATE TEMP TABLE counter (one boolean, change bigint); CREATE TEMP TABLE build (id uuid)',
      )
      const begun = value(await archive.lastChange())
      await bench.unsafe(`SET search_path = pg_temp, ${shop.name}`)
      const { body = '', sha256: hash = '' } = entries[1] ?? {}
      await bench`INSERT INTO entry (build, seq, body, sha256, bench)
        VALUES (${build}, 2, ${body}, decode(${hash}, 'hex'), ${first})`
      expect(value(await archive.lastChange())).toBe(begun + 1)
      expect(value(await archive.build(build))?.entries).toBe(2)
      for (const sql of [bench, owner]) await sql.end()
    })

    it('announces what it likes, and who follows hears of nothing that is not there', async () => {
      const shop = await shops.newShop()
      const archive = shop.client()
      value(await archive.keepSpec(ferryEngine))
      const heard: string[] = []
      const stop = archive.follow(0, {
        added: ({ id }) => heard.push(id),
        lists: () => heard.push('lists'),
        skipped: (why) => heard.push(why),
        connection: () => {},
      })
      const bench = shop.asRole('bench')
      const channel = `bedplate_${shop.name}`
      value(await archive.send(consignment(build, chainOf(build, 1))))
      await expect.poll(() => heard, { timeout: 20_000 }).toEqual([build])
      for (const payload of ['99999999999', '-1', 'DROP TABLE entry', buildId('2026-11-02T08:00:01Z', 3)])
        await bench`SELECT pg_notify(${channel}, ${payload}) FROM generate_series(1, 50)`
      await bench`SELECT pg_notify(${channel}, i::text || repeat('a', 7900)) FROM generate_series(1, 300) AS i`
      value(await archive.send(consignment(build, chainOf(build, 2))))
      await expect.poll(() => heard, { timeout: 20_000 }).toEqual([build, build])
      stop()
      await bench.end()
    })

    it('reads its own shop and sees nothing of another', async () => {
      const [own, other] = [await withBuild(), await shops.anyShop()]
      for (const who of ['bench', 'reader'] as const) {
        const sql = own.asRole(who)
        expect(await sql`SELECT seq FROM entry ORDER BY seq`).toHaveLength(3)
        for (const table of ['entry', 'build', 'spec', 'bedplate_version', 'list_item'])
          expect(await codeOf(sql`SELECT * FROM ${sql(other.name)}.${sql(table)}`)).toBe(notAllowed)
        await sql.end()
      }
      const elsewhere = shops.open({ ...own.owner, ...destinationIn(own, other) })
      expect(await elsewhere.builds()).toMatchObject({ ok: false, problem: { code: 'shop-not-allowed' } })
    })

    it('of a reader sends nothing, and sees no list of people', async () => {
      const shop = await withBuild()
      const reader = shop.client('reader')
      expect(value(await reader.builds())).toHaveLength(1)
      expect(await reader.send(consignment(build, chainOf(build, 4)))).toMatchObject({
        ok: false,
        problem: { code: 'shop-not-allowed' },
      })
      expect(await reader.listItems('people')).toMatchObject({
        ok: false,
        problem: { code: 'shop-not-allowed' },
      })
      expect(reader.connection().kind).toBe('open')
    })
  })

  describe('the owner', () => {
    it.each([
      'DELETE FROM entry',
      "UPDATE entry SET body = ''",
      'TRUNCATE entry CASCADE',
      'TRUNCATE entry_2026_11',
      'DELETE FROM spec',
    ])('is kept from a slip too: %s', async (statement) => {
      const owner = (await withBuild()).asRole('owner')
      expect(await codeOf(owner.unsafe(statement))).toBe(notAllowed)
      await owner.end()
    })
  })

  describe('the database checks what a program sends', () => {
    const entries = chainOf(build, 5)
    const [, , third, fourth, fifth] = entries
    if (third === undefined || fourth === undefined || fifth === undefined) throw new Error('five entries')
    const sealed = (seq: number, previous: string | null, of = build) =>
      seal({
        build: of,
        seq,
        at: '2026-11-02T09:00:00.000Z',
        person: 'Ana Ruiz',
        event: { type: 'part-fitted', version: 1, step: 'crank' },
        previous,
      })
    it.each<[string, StoredEntry]>([
      ['a hash of another text', { ...fourth, sha256: sha256('other') }],
      ['an altered text', { ...fourth, body: fourth.body.replace('step-4', 'step-9') }],
      ['one before which one is missing', fifth],
      ['one that follows another', sealed(4, sha256('another'))],
      ['one that follows none', sealed(4, null)],
      ['one of another build', sealed(4, third.sha256, buildId('2026-11-02T08:00:01Z', 9))],
      ['one that says another number', { ...sealed(5, third.sha256), seq: 4 }],
    ])('and refuses %s', async (_, { seq, body, sha256: hash }) => {
      const bench = (await withBuild()).asRole('bench')
      const inserted = bench`
        INSERT INTO entry (build, seq, body, sha256, bench)
        VALUES (${build}, ${seq}, ${body}, decode(${hash}, 'hex'), ${first})`
      expect(await codeOf(inserted)).toBe(checkFailed)
      await bench.end()
    })

    it.each([
      ["UPDATE build SET started_at = 'infinity'"],
      ["UPDATE build SET last_at = '20000-01-01'"],
      ["UPDATE build SET holder = 'Bench 2'"],
      ["UPDATE build SET name = repeat('a', 100000)"],
      ["INSERT INTO bench (id, name, program) VALUES ('0123456789ab', ' ', '1')"],
      ["INSERT INTO bench (id, name, program) VALUES ('0123456789ab', repeat('a', 81), '1')"],
      ["INSERT INTO list_item VALUES ('people', 'b', '{}', 'infinity', '0123456789ab')"],
      ["INSERT INTO list_item VALUES ('people', 'b', repeat('a', 2000000), now(), '0123456789ab')"],
      [
        "INSERT INTO photo (sha256, bytes) SELECT sha256(b), b FROM (SELECT decode(repeat('00', 800000), 'hex') AS b) AS x",
      ],
    ])('and refuses what no bench could read: %s', async (statement) => {
      const bench = (await withBuild()).asRole('bench')
      expect(await codeOf(bench.unsafe(statement))).toBe(checkFailed)
      await bench.end()
    })

    it.each<[string, { readonly bench?: string; readonly text?: string }]>([
      ['of a bench that is none', { bench: 'Bench 2' }],
      ['that is longer than any that a program makes', { text: 'a'.repeat(1024 * 1024) }],
    ])('and refuses an entry %s', async (_, { bench: by = first, text = '' }) => {
      const shop = await shops.anyShop()
      const at = buildId('2026-11-02T08:00:01Z', 7)
      value(await shop.client().keepSpec(ferryEngine))
      value(await shop.client().send(consignment(at, chainOf(at, 1))))
      const [begun] = chainOf(at, 1)
      const event = { type: 'part-fitted', version: 1, step: `crank${text}` } as const
      const next = seal({
        build: at,
        seq: 2,
        at: '2099-01-01T00:00:00.000Z',
        person: 'Ana Ruiz',
        event,
        previous: begun?.sha256 ?? null,
      })
      const bench = shop.asRole('bench')
      const inserted = (name: string) => bench`INSERT INTO entry (build, seq, body, sha256, bench)
        VALUES (${at}, 2, ${next.body}, decode(${next.sha256}, 'hex'), ${name})`
      expect(await codeOf(inserted(by))).toBe(checkFailed)
      await bench.end()
    })

    it('and takes what follows, with a NUL in a text that somebody pasted', async () => {
      const shop = await shops.anyShop()
      const archive = shop.client()
      value(await archive.keepSpec(ferryEngine))
      const begun = chainOf(build, 1)
      const next = seal({
        build,
        seq: 2,
        at: '2026-11-02T09:00:00.000Z',
        person: 'Ana Ruiz',
        event: { type: 'part-fitted', version: 1, step: 'a \0 and \\u0000 and “ü”' },
        previous: begun[0]?.sha256 ?? null,
      })
      value(await archive.send(consignment(build, [...begun, next])))
      expect(value(await archive.entries(build))[1]?.body).toBe(next.body)
    })
  })

  describe('entries lie by the month in which their build was started', () => {
    it.each([
      ['entry_2026_11', buildId('2026-11-30T23:59:59.999Z', 1)],
      ['entry_2026_12', buildId('2026-12-01T00:00:00.000Z', 2)],
      ['entry_2024_02', buildId('2024-02-29T12:00:00.000Z', 3)],
      ['entry_other', buildId('2099-01-01T00:00:00.000Z', 4)],
      ['entry_other', '00000000-0000-4000-8000-000000000005'],
    ])('%s', async (table, id) => {
      const shop = await withBuild()
      value(await shop.client().send(consignment(id, chainOf(id, 2))))
      const owner = shop.asRole('owner')
      const rows = await owner<{ lies: string }[]>`
        SELECT relname AS lies FROM entry JOIN pg_class ON pg_class.oid = entry.tableoid WHERE build = ${id}`
      expect(rows.map(({ lies }) => lies)).toEqual([table, table])
      await owner.end()
    })
  })
}

function destinationIn(own: NewShop, other: NewShop) {
  const { address, password } = own.role('bench')
  return { address: { ...address, shop: other.name }, password: () => password }
}
