import type { Sql } from 'postgres'
import { done, refused, type Outcome } from '../../../core/problem/index.ts'
import type { ListName } from '../../store/index.ts'
import type { ShopAddress } from '../address.ts'
import { problemOf } from '../fault.ts'
import { unfit, type FoundThere } from '../unfit.ts'
import { dial, type Destination } from './dial.ts'
import { findThere } from './find-there.ts'
import { latestShopVersion, namesOf, shopMigrations } from './migrations/index.ts'
import { newPassword, scramVerifier } from './scram.ts'
import { transaction } from './transaction.ts'

/** A role that one bench, or a reader, goes by. Its password is known here alone, and once. */
export interface NewRole {
  readonly kind: 'bench' | 'reader'
  readonly address: ShopAddress
  readonly password: string
}

/** Any number, the same in all programs: one sets up at a time (PostgreSQL, 9.27.10). */
const settingUp = 4_210_688_137

/**
 * Makes what a shop needs in a database, or brings it to this program’s version: the two roles of the shop, the schema, the tables;
 * then a login for each bench up to `benches` that is not there yet, and one for reading. All of it or nothing. Goes by the role of the owner, who
 * must be allowed to make roles.
 */
export function setUp(destination: Destination, benches: number): Promise<Outcome<readonly NewRole[]>> {
  return asOwner(destination, async (sql, found) => {
    const { address } = destination
    const { shop } = address
    const names = namesOf(shop)
    if (found.schema === 'foreign')
      return refused('shop-database-foreign', { database: address.database, shop })
    const isNew = found.schema === 'missing'
    if (isNew) {
      const taken =
        await sql`SELECT FROM pg_catalog.pg_roles WHERE rolname IN (${names.bench}, ${names.reader})`
      if (taken.length > 0) return refused('shop-name-taken', { shop })
      await sql.unsafe(`
        CREATE ROLE ${names.bench} NOLOGIN;
        CREATE ROLE ${names.reader} NOLOGIN;
        CREATE SCHEMA IF NOT EXISTS ${shop};
        CREATE TABLE ${shop}.bedplate_version (
          version integer PRIMARY KEY,
          at timestamptz NOT NULL DEFAULT now()
        );`)
    }
    await bringUp(sql, shop, isNew ? 0 : versionIn(found))
    const made: NewRole[] = []
    const wanted = [
      { kind: 'reader', user: `${names.reader}_1`, group: names.reader } as const,
      ...Array.from({ length: benches }, (_, index) => ({
        kind: 'bench' as const,
        user: `${names.bench}_${index + 1}`,
        group: names.bench,
      })),
    ]
    for (const { kind, user, group } of wanted) {
      const [there] = await sql`SELECT FROM pg_catalog.pg_roles WHERE rolname = ${user}`
      if (there !== undefined) continue
      const password = newPassword()
      await sql.unsafe(`
        CREATE ROLE ${user} LOGIN PASSWORD '${scramVerifier(password)}' IN ROLE ${group}`)
      made.push({ kind, address: { ...address, user }, password })
    }
    return done(made)
  })
}

/** Brings the tables to this program’s version; answers what they were and are. */
export function migrateShop(
  destination: Destination,
): Promise<Outcome<{ readonly from: number; readonly to: number }>> {
  return asOwner(destination, async (sql, found) => {
    if (typeof found.schema === 'string') {
      const why = unfit(destination.address, found, latestShopVersion)
      return why === null ? done({ from: 0, to: 0 }) : { ok: false, problem: why }
    }
    await bringUp(sql, destination.address.shop, found.schema.version)
    return done({ from: found.schema.version, to: latestShopVersion })
  })
}

/** Chooses the lists that all benches have in common, where something is chosen; answers those that are. */
export function chooseLists(
  destination: Destination,
  chosen: { readonly [List in ListName]?: 'one' | 'own' | undefined },
): Promise<Outcome<readonly ListName[]>> {
  return asOwner(destination, async (sql, found) => {
    const { address } = destination
    const why = unfit(address, found, latestShopVersion)
    if (why !== null) return { ok: false, problem: why }
    await sql.unsafe(`SET LOCAL search_path = ${address.shop}`)
    for (const [name, of] of Object.entries(chosen))
      if (of !== undefined) await sql`UPDATE list SET common = ${of === 'one'} WHERE name = ${name}`
    const common = await sql<{ name: ListName }[]>`SELECT name FROM list WHERE common ORDER BY name`
    return done(common.map(({ name }) => name))
  })
}

async function bringUp(sql: Sql, shop: string, from: number): Promise<void> {
  await sql.unsafe(`SET LOCAL search_path = ${shop}`)
  for (const { version, sql: text } of shopMigrations.slice(from)) {
    await sql.unsafe(text(namesOf(shop)))
    await sql`INSERT INTO bedplate_version (version) VALUES (${version})`
  }
}

function versionIn({ schema }: FoundThere): number {
  return typeof schema === 'string' ? 0 : schema.version
}

/** One transaction of the owner’s, on a server and a schema that this program can work with or bring to that. */
async function asOwner<Value>(
  destination: Destination,
  work: (sql: Sql, found: FoundThere) => Promise<Outcome<Value>>,
): Promise<Outcome<Value>> {
  const { address } = destination
  const sql = dial(destination, { connections: 1 })
  /** What takes a transaction back without being an error. */
  class Refusal extends Error {
    readonly why: Outcome<Value>
    constructor(why: Outcome<Value>) {
      super('refused')
      this.why = why
    }
  }
  try {
    return await transaction(sql, async (in_) => {
      const inside = in_ as unknown as Sql
      await inside`SELECT pg_advisory_xact_lock(${settingUp})`
      const found = await findThere(inside, address.shop)
      const fault = unfit(address, found, latestShopVersion)
      if (fault?.code === 'shop-server-old' || fault?.code === 'shop-schema-newer')
        throw new Refusal({ ok: false, problem: fault })
      const answer = await work(inside, found)
      if (!answer.ok) throw new Refusal(answer)
      return answer
    })
  } catch (error) {
    if (error instanceof Refusal) return error.why
    return { ok: false, problem: problemOf(error, address, destination.password() !== null) }
  } finally {
    await sql.end({ timeout: 1 }).catch(() => {})
  }
}
