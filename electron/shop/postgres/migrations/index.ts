import { archive } from './0001-archive.ts'

/** The names that a shop has in its database: its schema, and the roles of those who may send and those who may read. */
export interface ShopNames {
  readonly schema: string
  readonly bench: string
  readonly reader: string
}

/** One step of the archive’s schema, carried out by its owner’s role in one transaction, with the schema as the search path. */
export interface ShopMigration {
  readonly version: number
  readonly sql: (names: ShopNames) => string
}

/** In order, without a gap. A migration that has ever been released is never edited: a new one is added. */
export const shopMigrations: readonly ShopMigration[] = [archive]

/** The version of the archive’s schema that this program works with. */
export const latestShopVersion = shopMigrations.length

export function namesOf(shop: string): ShopNames {
  return { schema: shop, bench: `${shop}_bench`, reader: `${shop}_reader` }
}
