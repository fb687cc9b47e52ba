import type { TransactionSql } from 'postgres'
import { done, type Outcome } from '../../../core/problem/index.ts'
import { problemOf } from '../fault.ts'
import { listedByEntries, specsOf } from '../listed-by-entries.ts'
import { unfit } from '../unfit.ts'
import { lineToGoOnWith, wholeLines } from '../whole-lines.ts'
import { dial, type Destination } from './dial.ts'
import { findThere } from './find-there.ts'
import { latestShopVersion } from './migrations/index.ts'
import { entryIn, forksIn, type EntryRow, type ForkRow } from './rows.ts'
import { columnsOf } from './send.ts'
import { transaction } from './transaction.ts'

export interface Rebuilt {
  readonly builds: number
  /** Builds of which the list said something else than their entries, or that it did not have. */
  readonly changed: number
  /** Builds whose entries or spec cannot be read by this program: the list says of them what it said. */
  readonly unread: number
}

/** How many builds are gone through in one transaction; to these alone no bench adds meanwhile. */
const atOnce = 50

/** Makes the list of builds, and the words they are found by, again from the entries. By the owner’s role; benches go on meanwhile. */
export async function rebuildShopLists(destination: Destination): Promise<Outcome<Rebuilt>> {
  const { address } = destination
  const sql = dial(destination, { connections: 1 })
  const specs = new Map<string, string | null>()
  const sum = { builds: 0, changed: 0, unread: 0 }
  try {
    const why = unfit(address, await findThere(sql, address.shop), latestShopVersion)
    if (why !== null) return { ok: false, problem: why }
    for (let after: string | null = '00000000-0000-0000-0000-000000000000'; after !== null;) {
      const from: string = after
      after = await transaction(sql, (in_) => rebuildPage(in_, from, specs, sum))
    }
    const emptied = await sql`
      UPDATE build SET entries = 0, head_sha256 = NULL
      WHERE entries > 0 AND NOT EXISTS (SELECT FROM entry AS e WHERE e.build = build.id)`
    return done({ ...sum, changed: sum.changed + emptied.count })
  } catch (error) {
    return { ok: false, problem: problemOf(error, address, destination.password() !== null) }
  } finally {
    await sql.end({ timeout: 1 }).catch(() => {})
  }
}

/** The last build of the page, which begins after `from`; null where that was the last of all. */
async function rebuildPage(
  sql: TransactionSql,
  from: string,
  specs: Map<string, string | null>,
  sum: { builds: number; changed: number; unread: number },
): Promise<string | null> {
  const page = await sql<{ build: string }[]>`
    SELECT build FROM entry WHERE seq = 1 AND build > ${from} ORDER BY build LIMIT ${atOnce}`
  const ids = page.map(({ build }) => build)
  await sql`SELECT FROM build WHERE id IN (SELECT i::uuid FROM unnest(${ids}::text[]) AS i) ORDER BY id FOR UPDATE`
  for (const build of ids) {
    sum.builds += 1
    const answer = await rebuildOne(sql, build, specs)
    if (answer === 'unread') sum.unread += 1
    if (answer === 'changed') sum.changed += 1
  }
  return ids.length < atOnce ? null : (ids.at(-1) ?? null)
}

async function rebuildOne(
  sql: TransactionSql,
  build: string,
  specs: Map<string, string | null>,
): Promise<'same' | 'changed' | 'unread'> {
  const entries = (
    await sql<EntryRow[]>`SELECT seq, body, sha256, bench FROM entry WHERE build = ${build} ORDER BY seq`
  ).map(entryIn)
  const forks = forksIn(
    await sql<ForkRow[]>`
      SELECT build, seq, body, sha256, bench, root_seq, root_sha256, NULL AS at FROM fork_entry
      WHERE build = ${build} ORDER BY root_seq, root_sha256, seq`,
  )
  const line = lineToGoOnWith(wholeLines(entries, forks), null) ?? entries
  const [first] = entries
  for (const hash of [...specsOf(entries), ...specsOf(line)])
    if (!specs.has(hash)) {
      const [row] = await sql<{ text: string }[]>`SELECT text FROM spec WHERE sha256 = decode(${hash}, 'hex')`
      specs.set(hash, row?.text ?? null)
    }
  const specText = (hash: string) => specs.get(hash) ?? null
  const [made, own] = [line, entries].map((each) => listedByEntries(build, each, specText))
  if (!made || !own || first === undefined) return 'unread'
  const last = entries.at(-1)
  const year = made.listed.year
  const [ordinal] = await sql<{ ordinal: number }[]>`
    SELECT coalesce((SELECT ordinal FROM build WHERE id = ${build} AND year = ${year}),
      (SELECT coalesce(max(ordinal), 0) + 1 FROM build WHERE year = ${year})) AS ordinal`
  const listed = { ...made.listed, ordinal: ordinal?.ordinal ?? 1 }
  // What the triggers keep beside what a bench says.
  const [counted] = await sql<{ received_at: Date; forked: boolean }[]>`
    SELECT max(e.received_at) AS received_at, EXISTS (
      SELECT FROM fork_entry AS f WHERE f.build = ${build} AND f.sha256 = f.root_sha256 AND NOT EXISTS (
        SELECT FROM fork_settled AS s WHERE s.build = ${build} AND s.sha256 = f.sha256)) AS forked
    FROM entry AS e WHERE e.build = ${build}`
  const columns = {
    ...columnsOf(listed),
    entries: entries.length,
    head_sha256: Buffer.from(last?.sha256 ?? '', 'hex'),
    bench: last?.bench ?? '',
    forked: counted?.forked ?? false,
  }
  const [before] = await sql`SELECT ${sql(Object.keys(columns))} FROM build WHERE id = ${build}`
  const isSame = before !== undefined && sayingOf(before) === sayingOf(columns)
  // A line that was left is found by its words too.
  const words = [...made.words(listed.ordinal), ...own.words(listed.ordinal)]
  const gone = await sql`
    DELETE FROM mention WHERE build = ${build} AND (word, kind) NOT IN (
      SELECT m.word, m.kind FROM unnest(${words.map(({ word }) => word)}::text[], ${words.map(({ kind }) => kind)}::text[]) AS m (word, kind))`
  if (!isSame)
    await sql`
      INSERT INTO build ${sql({ id: build, ...columns })}
      ON CONFLICT (id) DO UPDATE SET ${sql(columns)}`
  const added = await sql`
    INSERT INTO mention (word, kind, build)
    SELECT DISTINCT m.word, m.kind, ${build}::uuid
    FROM unnest(${words.map(({ word }) => word)}::text[], ${words.map(({ kind }) => kind)}::text[]) AS m (word, kind)
    ON CONFLICT DO NOTHING`
  if (isSame && gone.count + added.count === 0) return 'same'
  await sql`SELECT note_change(${build}::uuid)`
  await sql`UPDATE build SET received_at = ${counted?.received_at ?? new Date(0)} WHERE id = ${build}`
  return 'changed'
}

/** What a row says, whichever way its moments are written. */
function sayingOf(row: Readonly<Record<string, unknown>>): string {
  const moment = (column: string) => new Date(row[column] as string | Date).getTime()
  return JSON.stringify({ ...row, started_at: moment('started_at'), last_at: moment('last_at') })
}
