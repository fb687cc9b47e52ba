import { performance } from 'node:perf_hooks'
import postgres from 'postgres'
import type { BuildEvent } from '../../core/builds/index.ts'
import { shopStatus, type ShopArchive } from '../../electron/shop/index.ts'
import { seal } from '../../electron/store/chain/chain.ts'
import { buildId, consignment, ferryEngine, value } from '../electron/shop/sample.ts'
import { noServer, type TestServer } from '../electron/shop/server.ts'
import type { Measure } from './measure.ts'
import { emptyArchive } from './shop/archive.ts'

const shop = 'shop'
const benches = 50
/** `BEDPLATE_SHOP_BUILDS=1000000 npm run bench -- shop` takes some minutes to fill. */
const builds = Number(process.env['BEDPLATE_SHOP_BUILDS'] ?? 10_000)

/**
 * Fills the list of a shop as fifty benches would in years: a build an hour for each. Without the triggers, as a restore does it, and
 * without entries, which no search reads.
 */
export async function fill(server: TestServer, upTo: number): Promise<void> {
  const sql = postgres({
    host: server.folder,
    port: server.port,
    user: 'owner',
    password: server.password,
    database: 'postgres',
    max: 1,
    onnotice: () => {},
    connection: { search_path: shop },
  })
  const idOf = `(lpad(to_hex((1577865600000 + n::bigint * 72000)), 12, '0') || '7000' || '8000' || lpad(to_hex(n), 12, '0'))::uuid`
  await sql.unsafe(
    `SET session_replication_role = 'replica'; SET synchronous_commit = off; SET maintenance_work_mem = '256MB'`,
  )
  await sql`INSERT INTO spec SELECT sha256, text, engine, demo FROM (VALUES
    (sha256(convert_to(${ferryEngine.text}, 'UTF8')), ${ferryEngine.text}, ${ferryEngine.engine}, true)) AS v (sha256, text, engine, demo)`
  await sql.unsafe(`
    INSERT INTO build SELECT ${idOf}, 2020 + n / 175000, n, 'Pump ' || n, 'P-' || n, (SELECT sha256 FROM spec),
      to_timestamp(1577865600 + n * 72), to_timestamp(1577865600 + n * 72 + 9000), n % 50 <> 0, false, n % 9 = 0,
      'a' || lpad(to_hex(n % ${benches}), 11, '0'), NULL, 200, sha256(convert_to(n::text, 'UTF8')), 'a' || lpad(to_hex(n % ${benches}), 11, '0'),
      now(), false, n FROM generate_series(1, ${upTo}) AS n`)
  // Its indexes are made at the end, which takes a fraction of the time.
  await sql.unsafe('ALTER TABLE mention DROP CONSTRAINT mention_pkey; DROP INDEX mention_by_build')
  await sql.unsafe(`
    INSERT INTO mention SELECT w.word, w.kind, ${idOf} FROM generate_series(1, ${upTo}) AS n,
    LATERAL (VALUES ('pump', 'name'), (n::text, 'name'), ('p', 'serial'), (n::text, 'serial'), ('p' || n, 'serial'),
      ('ferry', 'engine'), ('4', 'engine'), ((ARRAY['ruiz', 'brandvold', 'halloran', 'lind'])[1 + n % 4], 'person'),
      ((2020 + n / 175000) || lpad(n::text, 3, '0'), 'number')) AS w (word, kind)`)
  await sql.unsafe(
    'ALTER TABLE mention ADD PRIMARY KEY (word, kind, build); CREATE INDEX mention_by_build ON mention (build, word)',
  )
  await sql.unsafe('ANALYZE')
  await sql.end()
}

const lines = `SELECT b.*, s.engine, s.demo FROM (SELECT id FROM build WHERE id IN (
    SELECT build FROM mention WHERE word >= $1 AND word < $2) ORDER BY id DESC LIMIT 51) AS page
  JOIN build AS b ON b.id = page.id JOIN spec AS s ON s.sha256 = b.spec_sha256 ORDER BY b.id DESC`

type Question = (turn: number) => Promise<unknown>

/** The median of each, in ms. They are asked by turns: a machine that slows down meanwhile slows all of them. */
async function medians<Name extends string>(
  times: number,
  questions: { readonly [Each in Name]: Question },
): Promise<{ readonly [Each in Name]: number }> {
  const each = (Object.entries(questions) as [Name, Question][]).map(([name, ask]) => {
    const durations: number[] = []
    return { name, ask, durations }
  })
  for (let turn = -3; turn < times; turn += 1)
    for (const { ask, durations } of each) {
      const start = performance.now()
      await ask(turn)
      if (turn >= 0) durations.push(performance.now() - start)
    }
  const middle = (durations: number[]) => durations.toSorted((a, b) => a - b)[Math.floor(times / 2)] ?? 0
  return Object.fromEntries(each.map(({ name, durations }) => [name, middle(durations)])) as {
    [Each in Name]: number
  }
}

/** Through the archive, and by one bare query on a line of its own. */
async function searched(archive: ShopArchive, server: TestServer) {
  const sql = postgres({
    host: server.folder,
    port: server.port,
    user: 'owner',
    password: server.password,
    database: 'postgres',
    max: 1,
    onnotice: () => {},
    connection: { search_path: shop },
  })
  const serial = (turn: number) => `p${1 + (((turn + 3) * 7919) % builds)}`
  const bare = (word: string) => sql.unsafe(lines, [word, `${word}\u{10FFFF}`], { prepare: false })
  const found = {
    ...(await medians(100, {
      bareRareMs: (turn) => bare(serial(turn)),
      rareMs: (turn) => archive.builds({ words: [serial(turn)], most: 51 }),
    })),
    ...(await medians(20, {
      bareCommonMs: () => bare('ruiz'),
      commonMs: () => archive.builds({ words: ['ruiz'], most: 51 }),
    })),
    ...(await medians(20, {
      twoWordsMs: (turn) => archive.builds({ words: ['ruiz', serial(turn)], most: 51 }),
      twoCommonMs: () => archive.builds({ words: ['ruiz', 'pump'], most: 51 }),
      listMs: () => archive.builds({ most: 51 }),
      openMs: () => archive.builds({ state: 'open', most: 51 }),
      ofOneBenchMs: () => archive.builds({ holder: 'a00000000001', most: 51 }),
      noneMs: () => archive.builds({ words: ['zzz'], most: 51 }),
    })),
  }
  await sql.end()
  return found
}

const entriesEach = 200

/** As a build is confirmed: an entry at a time at most benches, ten at once where the network was down. */
function pulled(pull: number): BuildEvent {
  return {
    type: 'fastener-pulled',
    version: 1,
    procedure: 'case-bolts',
    pull,
    pass: 1,
    fastener: `M${pull % 14}`,
    reading: { typed: '24.2', value: 24.2, unit: 'N·m' },
    verdict: 'within',
    outOfOrder: null,
  }
}

async function sendBuilds(archive: ShopArchive, count: number): Promise<number> {
  value(await archive.keepSpec(ferryEngine))
  const begun = performance.now()
  for (let number = 1; number <= count; number += 1) {
    const build = buildId('2026-11-02T08:00:01Z', number)
    const entries: ReturnType<typeof seal>[] = []
    for (let seq = 1; seq <= entriesEach; seq += 1) {
      const at = `2026-11-02T08:00:${String(seq % 60).padStart(2, '0')}.000Z`
      const previous = entries.at(-1)?.sha256 ?? null
      entries.push(seal({ build, seq, at, person: 'Ana Ruiz', event: pulled(seq), previous }))
    }
    for (let from = 0; from < entriesEach; from += 10)
      value(await archive.send(consignment(build, entries.slice(from, from + 10))))
  }
  return performance.now() - begun
}

const most = 2

export const measures: readonly Measure[] = [
  {
    name: 'shop-search',
    bar: `a search of the shop’s archive takes at most ${most} times the bare indexed query`,
    async take() {
      const why = noServer()
      if (why !== null) {
        console.error(`Skipped: ${why}`)
        return { values: {} }
      }
      const { server, archive, close } = await emptyArchive()
      try {
        const begun = performance.now()
        await fill(server, builds)
        const filledS = (performance.now() - begun) / 1000
        const times = await searched(archive, server)
        return {
          values: {
            builds,
            filledS,
            ...times,
            rareRatio: times.rareMs / times.bareRareMs,
            commonRatio: times.commonMs / times.bareCommonMs,
          },
          holds: times.rareMs <= most * times.bareRareMs && times.commonMs <= most * times.bareCommonMs,
        }
      } finally {
        await close()
      }
    },
  },
  {
    name: 'shop-bytes',
    async take() {
      const why = noServer()
      if (why !== null) {
        console.error(`Skipped: ${why}`)
        return { values: {} }
      }
      const { owner, archive, close } = await emptyArchive()
      try {
        const empty = value(await shopStatus(owner))
        const sent = 40
        const ms = await sendBuilds(archive, sent)
        const full = value(await shopStatus(owner))
        const bytesIn = ({ tables }: typeof full) => tables.reduce((sum, { bytes }) => sum + bytes, 0)
        const ofEntries = full.tables.find(({ table }) => table === 'entry')?.bytes ?? 0
        return {
          values: {
            builds: sent,
            entriesEach,
            bytesABuild: Math.round((bytesIn(full) - bytesIn(empty)) / sent),
            bytesAnEntry: Math.round(ofEntries / full.entries),
            msASending: ms / (sent * (entriesEach / 10)),
          },
        }
      } finally {
        await close()
      }
    },
  },
]
