import type { Sql } from 'postgres'
import { done, refused } from '../../../core/problem/index.ts'
import { photoHash, sha256, type KeptSpec, type ListName } from '../../store/index.ts'
import type { ShopArchive } from '../archive.ts'
import type { Destination } from './dial.ts'
import { followOn, type FollowTimes } from './follow.ts'
import {
  benchIn,
  buildIn,
  entryIn,
  forksIn,
  itemIn,
  unreadable,
  type BenchRow,
  type BuildRow,
  type EntryRow,
  type ForkRow,
  type ItemRow,
} from './rows.ts'
import { linesOf, pageOf } from './search.ts'
import { hash, sendTo } from './send.ts'
import { openServerLine } from './server-line.ts'

export interface ArchiveOptions extends Partial<FollowTimes> {
  readonly now?: () => Date
  readonly mostAnswerMs?: number
}

/** How many changes are announced at once. */
const mostChanges = 200

/** The archive on a server. Nothing is connected before it is asked something. */
export function postgresArchive(
  destination: Destination,
  {
    now = () => new Date(),
    mostAnswerMs = 20_000,
    askEachMs = 20_000,
    retryMs = [250, 15_000],
  }: ArchiveOptions = {},
): ShopArchive {
  const line = openServerLine(destination, { now, mostAnswerMs })
  const one = linesOf('SELECT $1::uuid AS id')

  /** Planned for its values each time: how common a word is decides how it is best looked for. */
  const lines = async (sql: Sql, text: string, values: readonly (string | number | string[])[]) =>
    (await sql.unsafe<BuildRow[]>(text, [...values], { prepare: false })).map(buildIn)

  const lastChange: ShopArchive['lastChange'] = () =>
    line.ask(async (sql) => {
      const [row] = await sql<{ last: string }[]>`SELECT coalesce(max(change), 0) AS last FROM build`
      const last = Number(row?.last ?? 0)
      if (!Number.isSafeInteger(last)) throw unreadable()
      return done(last)
    })

  const changesAfter: ShopArchive['changesAfter'] = (change) =>
    line.ask(async (sql) =>
      done(
        (
          await sql<BuildRow[]>`
            SELECT b.*, s.engine, s.demo FROM build AS b JOIN spec AS s ON s.sha256 = b.spec_sha256
            WHERE b.change > ${change} ORDER BY b.change LIMIT ${mostChanges}`
        ).map(buildIn),
      ),
    )

  return {
    shop: destination.address.shop,
    connection: () => line.connection(),
    greet: ({ id, name, program }) =>
      line.ask(async (sql) => {
        await sql`
          INSERT INTO bench (id, name, program) VALUES (${id}, ${name}, ${program})
          ON CONFLICT (id) DO UPDATE SET name = excluded.name, program = excluded.program, seen_at = now()`
        return done(null)
      }),
    benches: () =>
      line.ask(async (sql) =>
        done(
          (await sql<BenchRow[]>`SELECT id, name, program, seen_at FROM bench ORDER BY name COLLATE "C"`).map(
            benchIn,
          ),
        ),
      ),
    lacking: ({ specs, photos }) =>
      line.ask(async (sql) => {
        const [hasSpec, hasPhoto] = await Promise.all([
          sql<
            { sha256: Buffer }[]
          >`SELECT sha256 FROM spec WHERE encode(sha256, 'hex') = ANY(${[...specs]}::text[])`,
          sql<{ sha256: Buffer }[]>`SELECT sha256 FROM photo WHERE sha256 IN (
            SELECT decode(h, 'hex') FROM unnest(${[...photos]}::text[]) AS h)`,
        ])
        const lacksIn = (rows: readonly { sha256: Buffer }[], asked: readonly string[]) => {
          const there = new Set(rows.map(({ sha256 }) => sha256.toString('hex')))
          return asked.filter((each) => !there.has(each))
        }
        return done({ specs: lacksIn(hasSpec, specs), photos: lacksIn(hasPhoto, photos) })
      }),
    keepSpec: ({ text, engine, demo }: KeptSpec) =>
      line.ask(async (sql) => {
        await sql`
          INSERT INTO spec (sha256, text, engine, demo) VALUES (${hash(sha256(text))}, ${text}, ${engine}, ${demo})
          ON CONFLICT DO NOTHING`
        return done(null)
      }),
    keepPhoto: (bytes) =>
      line.ask(async (sql) => {
        await sql`
          INSERT INTO photo (sha256, bytes) VALUES (${hash(photoHash(bytes))}, ${Buffer.from(bytes)}) ON CONFLICT DO NOTHING`
        return done(null)
      }),
    send: (consignment) => line.ask((sql) => sendTo(sql, consignment)),
    builds: (search = {}) =>
      line.ask(async (sql) => {
        const { sql: page, values } = pageOf(search)
        return done(await lines(sql, linesOf(page), values))
      }),
    build: (id) =>
      line.ask(async (sql) => done((await lines(sql, one, [id])).find(({ entries }) => entries > 0) ?? null)),
    entries: (build, after = 0) =>
      line.ask(async (sql) =>
        done(
          (
            await sql<EntryRow[]>`
              SELECT seq, body, sha256, bench FROM entry WHERE build = ${build} AND seq > ${after} ORDER BY seq`
          ).map(entryIn),
        ),
      ),
    spec: (asked) =>
      line.ask(async (sql) => {
        const [row] = await sql<KeptSpec[]>`SELECT text, engine, demo FROM spec WHERE sha256 = ${hash(asked)}`
        if (row !== undefined && sha256(row.text) !== asked) throw unreadable()
        return done(row === undefined ? null : { text: row.text, engine: row.engine, demo: row.demo })
      }),
    photo: (asked) =>
      line.ask(async (sql) => {
        const [row] = await sql<{ bytes: Buffer }[]>`SELECT bytes FROM photo WHERE sha256 = ${hash(asked)}`
        if (row !== undefined && photoHash(row.bytes) !== asked) throw unreadable()
        return done(row?.bytes ?? null)
      }),
    buildsOf: (ids) =>
      line.ask(async (sql) =>
        done(
          (
            await sql<BuildRow[]>`
              SELECT b.*, s.engine, s.demo FROM build AS b JOIN spec AS s ON s.sha256 = b.spec_sha256
              WHERE b.id IN (SELECT i::uuid FROM unnest(${[...ids]}::text[]) AS i) AND b.entries > 0`
          ).map(buildIn),
        ),
      ),
    lastChange,
    changesAfter,
    follow: followOn(destination, line, { changesAfter, lastChange }, { askEachMs, retryMs }),
    forks: (build) =>
      line.ask(async (sql) =>
        done(
          forksIn(
            await sql<ForkRow[]>`
              SELECT f.build, f.seq, f.body, f.sha256, f.bench, f.root_seq, f.root_sha256,
                s.bench AS by_bench, s.person, s.reason, s.at
              FROM fork_entry AS f LEFT JOIN fork_settled AS s ON s.build = f.build AND s.sha256 = f.root_sha256
              ${build === undefined ? sql`` : sql`WHERE f.build = ${build}`}
              ORDER BY f.build DESC, f.root_seq, f.root_sha256, f.seq`,
          ),
        ),
      ),
    settle: ({ build, at, sha256 }, { bench, person, reason }) =>
      line.ask(async (sql) => {
        const settled = await sql`
          INSERT INTO fork_settled (build, sha256, bench, person, reason)
          SELECT build, sha256, ${bench}, ${person}, ${reason} FROM fork_entry
          WHERE build = ${build} AND sha256 = ${hash(sha256)} AND root_sha256 = sha256 AND seq = ${at}
          ON CONFLICT DO NOTHING`
        return settled.count === 0 ? refused('shop-fork-unknown', {}) : done(null)
      }),
    commonLists: () =>
      line.ask(async (sql) =>
        done(
          (await sql<{ name: ListName }[]>`SELECT name FROM list WHERE common ORDER BY name`).map(
            ({ name }) => name,
          ),
        ),
      ),
    listItems: (list) =>
      line.ask(async (sql) =>
        done(
          (
            await sql<ItemRow[]>`SELECT id, json, at, bench FROM list_item WHERE list = ${list} ORDER BY id`
          ).map(itemIn),
        ),
      ),
    keepListItems: (list, items) =>
      line.ask(async (sql) => {
        const rows = items.map(({ id, json, atUtc, bench }) => ({ list, id, json, at: atUtc, bench }))
        // That nothing earlier takes the place of what is there, a trigger sees to.
        if (rows.length > 0)
          await sql`
            INSERT INTO list_item ${sql(rows)}
            ON CONFLICT (list, id) DO UPDATE SET json = excluded.json, at = excluded.at, bench = excluded.bench`
        return done(null)
      }),
    close: () => line.close(),
  }
}
