import { done, type Outcome } from '../../../core/problem/index.ts'
import type { ShopBench } from '../archive.ts'
import { problemOf } from '../fault.ts'
import { unfit } from '../unfit.ts'
import { dial, type Destination } from './dial.ts'
import { findThere } from './find-there.ts'
import { latestShopVersion } from './migrations/index.ts'
import { benchIn, type BenchRow } from './rows.ts'

/** What an archive holds and takes. */
export interface ShopStatus {
  /** `15.18` */
  readonly server: string
  readonly version: number
  readonly builds: number
  readonly entries: number
  readonly photos: number
  /** Forks that nobody settled. */
  readonly forks: number
  readonly benches: readonly ShopBench[]
  /** Each table with its indexes, the largest first; the months of entries are one. */
  readonly tables: readonly { readonly table: string; readonly bytes: number }[]
}

/** Counts everything, which takes a while where there is much. Any role of the shop may ask. */
export async function shopStatus(destination: Destination): Promise<Outcome<ShopStatus>> {
  const { address } = destination
  const sql = dial(destination, { connections: 1 })
  try {
    const found = await findThere(sql, address.shop)
    const fault = unfit(address, found, latestShopVersion)
    if (fault !== null) return { ok: false, problem: fault }
    const [counts] = await sql<{ builds: number; entries: number; photos: number; forks: number }[]>`
      SELECT (SELECT count(*)::int FROM build WHERE entries > 0) AS builds,
        (SELECT count(*)::int FROM entry) AS entries, (SELECT count(*)::int FROM photo) AS photos,
        (SELECT count(*)::int FROM build WHERE forked) AS forks`
    const benches = await sql<
      BenchRow[]
    >`SELECT id, name, program, seen_at FROM bench ORDER BY name COLLATE "C"`
    const tables = await sql<{ table: string; bytes: string }[]>`
      SELECT CASE WHEN c.relispartition THEN 'entry' ELSE c.relname END AS table,
        sum(pg_total_relation_size(c.oid))::text AS bytes
      FROM pg_class AS c JOIN pg_namespace AS n ON n.oid = c.relnamespace
      WHERE n.nspname = ${address.shop} AND c.relkind = 'r' GROUP BY 1 ORDER BY sum(pg_total_relation_size(c.oid)) DESC`
    return done({
      server: found.server.split(' ')[0] ?? '',
      version: latestShopVersion,
      ...(counts ?? { builds: 0, entries: 0, photos: 0, forks: 0 }),
      benches: benches.map(benchIn),
      tables: tables.map(({ table, bytes }) => ({ table, bytes: Number(bytes) })),
    })
  } catch (error) {
    return { ok: false, problem: problemOf(error, address, destination.password() !== null) }
  } finally {
    await sql.end({ timeout: 1 }).catch(() => {})
  }
}
