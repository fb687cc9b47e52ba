import { problem, type Problem } from '../../core/problem/index.ts'
import type { ShopAddress } from './address.ts'
import { leastServer } from './fault.ts'

/** What was found at an address. */
export interface FoundThere {
  /** As the server writes it: `15.18 (Debian 15.18-0+deb12u1)`. */
  readonly server: string
  /** What the schema of the shop is: another program’s has no table of versions. */
  readonly schema: 'missing' | 'foreign' | { readonly version: number }
}

/** Why a program that knows this version of the tables cannot work with what was found; null where it can. */
export function unfit(
  { host, database, shop }: ShopAddress,
  { server, schema }: FoundThere,
  known: number,
): Problem | null {
  const version = serverVersion(server)
  if (version < leastServer)
    return problem('shop-server-old', { host, version: server.split(' ')[0] ?? '', least: leastServer })
  if (schema === 'missing') return problem('shop-not-set-up', { database, shop })
  if (schema === 'foreign') return problem('shop-database-foreign', { database, shop })
  if (schema.version > known) return problem('shop-schema-newer', { shop, version: schema.version, known })
  if (schema.version < known) return problem('shop-schema-older', { shop, version: schema.version, known })
  return null
}

/** 15 of `15.18 (Debian …)`; 0 of what is no version. */
function serverVersion(server: string): number {
  const version = Number.parseInt(server, 10)
  return Number.isNaN(version) ? 0 : version
}
