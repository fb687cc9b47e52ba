import type { Sql } from 'postgres'
import type { FoundThere } from '../unfit.ts'

/** What is at the other end. Asks in steps: what a server of version 11 does not know, it is not asked. */
export async function findThere(sql: Sql, shop: string): Promise<FoundThere> {
  const [row] = await sql<{ readonly server_version: string }[]>`SHOW server_version`
  const server = row?.server_version ?? ''
  // The catalogue is everybody's to read, so that what is there is distinguished from what may not be seen.
  const [there] = await sql<{ readonly own: boolean; readonly others: boolean }[]>`
    SELECT count(*) FILTER (WHERE c.relname = 'bedplate_version') > 0 AS own, count(c.relname) > 0 AS others
    FROM pg_catalog.pg_namespace AS n LEFT JOIN pg_catalog.pg_class AS c ON c.relnamespace = n.oid
    WHERE n.nspname = ${shop}`
  if (there?.own !== true) return { server, schema: there?.others === true ? 'foreign' : 'missing' }
  const [last] = await sql<{ readonly version: number }[]>`
    SELECT coalesce(max(version), 0)::int AS version FROM ${sql(shop)}.bedplate_version`
  return { server, schema: { version: last?.version ?? 0 } }
}
