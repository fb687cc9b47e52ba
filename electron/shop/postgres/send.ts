import type { Sql, TransactionSql } from 'postgres'
import { done, refused, type Outcome } from '../../../core/problem/index.ts'
import type { StoredEntry } from '../../store/index.ts'
import { isListed, type Consignment, type ListedBuild, type Receipt } from '../archive.ts'
import { foundBy } from '../found-by.ts'
import { placed, type KnownBuild, type Root } from '../placing.ts'
import { transaction } from './transaction.ts'

/**
 * Adds the entries of a consignment in one transaction. The line of the build is locked first, so that two that send to one build come
 * after one another; the entries come last, as they take the lock of the counter, which all consignments of the shop share.
 */
export async function sendTo(sql: Sql, consignment: Consignment): Promise<Outcome<Receipt>> {
  const { build, bench, entries, listed } = consignment
  const [spec] = await sql`SELECT 1 FROM spec WHERE sha256 = ${hash(listed.specSha256)}`
  if (spec === undefined) return refused('shop-spec-missing', {})
  return transaction(sql, async (in_): Promise<Outcome<Receipt>> => {
    // Looked at first: where they are no entries of this build, nothing of them may be listed either.
    const sound = placed(build, entries, ownOnly(entries))
    if (sound.kind === 'refused') return refused('shop-entry-refused', { entry: sound.entry })
    if (entries[0]?.seq === 1)
      await in_`INSERT INTO build ${in_({ id: build, ...columnsOf(listed) })} ON CONFLICT DO NOTHING`
    const known = await knownOf(in_, build, entries)
    if (known === null) return done({ kind: 'behind', from: 1 })
    const place = placed(build, entries, known)
    switch (place.kind) {
      case 'refused':
        return refused('shop-entry-refused', { entry: place.entry })
      case 'behind':
        return done(place)
      case 'fork': {
        const isNews = isListed(consignment, 'fork') && (await list(in_, consignment))
        const added = await addBeside(in_, build, bench, place.root, place.beside)
        if (isNews && added === 0) await announce(in_, build)
        return done({ kind: 'fork', at: place.root.at })
      }
      case 'kept':
        if (place.added.length > 0)
          await Promise.all([
            isListed(consignment, 'kept') && list(in_, consignment),
            add(in_, build, bench, place.added),
          ])
        else if (consignment.counts === 'here' && (await list(in_, consignment))) await announce(in_, build)
        return done({ kind: 'kept', upTo: entries.at(-1)?.seq ?? 0 })
    }
  })
}

/** Whether the list says something else of the build now. */
async function list(sql: TransactionSql, consignment: Consignment): Promise<boolean> {
  const { build, listed } = consignment
  const columns = columnsOf(listed)
  const is = Object.entries(columns).map(
    ([column, value]) => sql`${sql(column)} IS NOT DISTINCT FROM ${value}`,
  )
  const [changed] = await Promise.all([
    sql`UPDATE build SET ${sql(columns)} WHERE id = ${build} AND NOT (${is.flatMap((each, at) => (at === 0 ? [each] : [sql` AND `, each]))})`,
    addWords(sql, consignment),
  ])
  return changed.count > 0
}

/** To those who follow: a line that counts now adds no entry by that. */
async function announce(sql: TransactionSql, build: string): Promise<void> {
  await sql`SELECT announce(${build})`
}

/** As if the archive had all that comes before them, and nothing else. */
function ownOnly(entries: readonly StoredEntry[]): KnownBuild {
  return { count: (entries[0]?.seq ?? 1) - 1, hashAt: () => null, rootOf: () => null }
}

/** Null where the build is not there. */
async function knownOf(
  sql: TransactionSql,
  build: string,
  entries: readonly StoredEntry[],
): Promise<KnownBuild | null> {
  const [first, last] = [entries[0]?.seq ?? 0, entries.at(-1)?.seq ?? 0]
  const [[row], there, forks] = await Promise.all([
    sql<{ entries: number }[]>`SELECT entries FROM build WHERE id = ${build} FOR UPDATE`,
    sql<{ seq: number; sha256: Buffer }[]>`
      SELECT seq, sha256 FROM entry WHERE build = ${build} AND seq BETWEEN ${first - 1} AND ${last}`,
    sql<{ sha256: Buffer; root_seq: number; root_sha256: Buffer }[]>`
      SELECT sha256, root_seq, root_sha256 FROM fork_entry
      WHERE build = ${build} AND seq BETWEEN ${first - 1} AND ${last}`,
  ])
  if (row === undefined) return null
  const hashes = new Map(there.map(({ seq, sha256 }) => [seq, sha256.toString('hex')]))
  const roots = new Map(
    forks.map((fork): [string, Root] => [
      fork.sha256.toString('hex'),
      { at: fork.root_seq, sha256: fork.root_sha256.toString('hex') },
    ]),
  )
  return {
    count: row.entries,
    hashAt: (seq) => hashes.get(seq) ?? null,
    rootOf: (sha256) => roots.get(sha256) ?? null,
  }
}

async function add(
  sql: TransactionSql,
  build: string,
  bench: string,
  entries: readonly StoredEntry[],
): Promise<void> {
  await sql`
    INSERT INTO entry (build, seq, body, sha256, bench)
    SELECT ${build}::uuid, e.seq, e.body, decode(e.sha256, 'hex'), ${bench}
    FROM unnest(${entries.map(({ seq }) => seq)}::int[], ${entries.map(({ body }) => body)}::text[],
      ${entries.map(({ sha256 }) => sha256)}::text[]) AS e (seq, body, sha256) ORDER BY e.seq`
}

async function addBeside(
  sql: TransactionSql,
  build: string,
  bench: string,
  root: Root,
  entries: readonly StoredEntry[],
): Promise<number> {
  const added = await sql`
    INSERT INTO fork_entry (build, seq, body, sha256, bench, root_seq, root_sha256)
    SELECT ${build}::uuid, e.seq, e.body, decode(e.sha256, 'hex'), ${bench}, ${root.at}::int, ${hash(root.sha256)}::bytea
    FROM unnest(${entries.map(({ seq }) => seq)}::int[], ${entries.map(({ body }) => body)}::text[],
      ${entries.map(({ sha256 }) => sha256)}::text[]) AS e (seq, body, sha256) ORDER BY e.seq
    ON CONFLICT DO NOTHING`
  return added.count
}

async function addWords(sql: TransactionSql, consignment: Consignment): Promise<void> {
  const words = foundBy(consignment)
  if (words.length === 0) return
  await sql`
    INSERT INTO mention (word, kind, build)
    SELECT DISTINCT m.word, m.kind, ${consignment.build}::uuid
    FROM unnest(${words.map(({ word }) => word)}::text[], ${words.map(({ kind }) => kind)}::text[]) AS m (word, kind)
    ON CONFLICT DO NOTHING`
}

/** The columns of a build that a bench says. */
export function columnsOf(listed: ListedBuild) {
  return {
    year: listed.year,
    ordinal: listed.ordinal,
    name: listed.name,
    serial: listed.serial,
    spec_sha256: hash(listed.specSha256),
    started_at: listed.startedAtUtc,
    last_at: listed.lastAtUtc,
    finished: listed.finished,
    voided: listed.voided,
    flagged: listed.flagged,
    holder: listed.holder,
    standing: listed.standing,
  }
}

export function hash(sha256: string): Buffer {
  return Buffer.from(sha256, 'hex')
}
